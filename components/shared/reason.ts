import type { Caution } from '../../core/working/caution.js';

/** Whether a caution says that no error was found at all. */
export type IsGrave = (caution: Caution) => boolean;

/** An error hardly ever so large may yet be so, and belongs in the book; but nobody should use it. */
const isReason = (caution: Caution, isGrave: IsGrave): boolean => isGrave(caution) || caution.code === 'deviation-unreal';

/** The reasons why an answer is not to be used, which are told beside it. */
export const reasonsOf = (cautions: readonly Caution[], isGrave: IsGrave): Caution[] => cautions.filter((caution) => isReason(caution, isGrave));

/** The cautions that can wait for what stands below the answer. */
export const otherCautions = (cautions: readonly Caution[], isGrave: IsGrave): Caution[] => cautions.filter((caution) => !isReason(caution, isGrave));
