import type { FieldInput } from '../shared/field.js';
import { chosenSettings, swingFields } from './swing-fields.js';
import type { SwingProperties } from './swing-properties.js';

const settingNames: readonly string[] = [...Object.keys(swingFields), ...chosenSettings];

/** The settings of a swing as they are typed and chosen, by their properties: for a draft. */
export function settingTexts(page: SwingProperties): Readonly<Record<string, string>> {
  const inputs = settingNames.map((name) => [name, (page as unknown as Record<string, FieldInput>)[name]] as const);
  return Object.fromEntries(inputs.flatMap(([name, value]) => (typeof value === 'string' || typeof value === 'number' ? [[name, String(value)]] : [])));
}

/** Puts them back; what is no setting is passed over. */
export function takeSettingTexts(page: SwingProperties, texts: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(texts)) if (settingNames.includes(name)) Object.assign(page, { [name]: text });
}
