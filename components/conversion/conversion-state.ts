import type { Reckoning } from '../../core/sight/chain-steps.js';
import type { FieldState } from '../shared/field.js';
import type { GivenCard } from '../shared/given-card.js';
import type { ConversionKind } from '../../core/sight/conversion.js';
import type { DeviationSource, SourceStates } from './deviation-source.js';
import type { LookStates } from './three-compasses-view.js';

/** Everything the views of a conversion read. */
export interface ConversionState extends LookStates {
  readonly kind: ConversionKind;
  readonly heading: FieldState<number>;
  readonly headingBy: Reckoning;
  readonly bearing: FieldState<number>;
  readonly bearingBy: Reckoning;
  readonly leeway: FieldState<number>;
  readonly wind: FieldState<number>;
  readonly byHand: FieldState<number>;
  readonly speed: FieldState<number>;
  readonly latitude: FieldState<number>;
  readonly given: GivenCard;
  readonly source: DeviationSource;
  readonly sources: SourceStates;
}
