/** Whether what stands in an element is laid out from right to left, as its frame says. */
export function readsFromRight(element: Element | null): boolean {
  return element?.closest('[dir]:not([dir="auto"])')?.getAttribute('dir') === 'rtl';
}
