import type { SvelteHTMLElements } from 'svelte/elements';
import type {} from 'lubberline/components/amplitude/define.js';
import type {} from 'lubberline/svelte';

type Props = SvelteHTMLElements['lubber-amplitude'];

export const right: Props = { latitude: '33-24.0N', heightOfEye: 18, theme: 'night', class: 'wide', 'onlubber-result': ({ detail }) => void detail.widget.length };

// @ts-expect-error: there is no such moment
export const wrong: Props = { moment: 'noon' };
