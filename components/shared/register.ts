/** The release these files belong to; two releases on one page are worth one warning. */
export const release = '0.1.0';

interface Released {
  readonly lubberlineRelease?: string;
}

let warned = false;

/**
 * Defines a tag unless it is defined already, so that two bundles on a page do no harm.
 * The first definition stays; another release coming second says so once on the console.
 */
export function register(tag: string, element: CustomElementConstructor, registry: CustomElementRegistry = customElements): void {
  const first = registry.get(tag) as (CustomElementConstructor & Released) | undefined;
  if (!first) {
    registry.define(tag, element);
  } else if (first !== element && first.lubberlineRelease !== release && !warned) {
    warned = true;
    // A page's owner can only learn of it here: nothing is thrown into the page.
    // eslint-disable-next-line no-console
    console.warn(`<${tag}> is defined already, by release ${first.lubberlineRelease ?? 'unknown'}: what release ${release} defines besides stays unused.`);
  }
}
