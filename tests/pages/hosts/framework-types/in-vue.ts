import type { GlobalComponents } from 'vue';
import type {} from 'lubberline/components/amplitude/define.js';
import type {} from 'lubberline/vue';

type Props = InstanceType<GlobalComponents['lubber-amplitude']>['$props'];

export const right: Props = { latitude: '33-24.0N', heightOfEye: 18, theme: 'night', class: 'wide', onLubberResult: ({ detail }) => void detail.widget.length };

// @ts-expect-error: there is no such moment
export const wrong: Props = { moment: 'noon' };
