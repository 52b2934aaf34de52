import type { TemplateResult } from 'lit';
import { bodyNames, kindOf } from '../../core/sky/body.js';
import type { BodyName } from '../../core/sky/body.js';
import { bodyName } from './body-name.js';
import { selectView } from './choice-view.js';
import type { LubberElement } from './lubber-element.js';

/** The list of bodies: Sun, Moon and planets, then the stars by name. */
export function bodySelect(host: LubberElement, chosen: BodyName): TemplateResult {
  const option = (name: BodyName): { value: string; label: string } => ({ value: name, label: bodyName(host, name) });
  // In plain order of letters: to make ready the order of a language takes longer than all else here.
  const isStar = (name: BodyName): boolean => kindOf(name) === 'star';
  // Sixty entries of a list that is still shut: until the answer is on the screen the chosen one will do.
  const stars = host.closed.drawn ? bodyNames.filter(isStar).sort() : [chosen].filter(isStar);
  return selectView(host, 'body', host.t('sight.body'), chosen, [
    { label: host.t('sight.bodies.solar'), options: bodyNames.filter((name) => !isStar(name)).map(option) },
    { label: host.t('sight.bodies.stars'), options: stars.map(option) },
  ]);
}
