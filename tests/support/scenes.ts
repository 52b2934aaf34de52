/** Every widget in the states a user meets it in; whoever adds a widget adds it here, or a test fails. */

/** The states each widget is looked at in. */
export const stateNames = ['empty', 'refused', 'answered', 'locked', 'hidden', 'warned'] as const;
export type StateName = (typeof stateNames)[number];

interface Subject {
  /** Attributes of an answer, as they stand in a page. */
  readonly answered: string;
  /** Attributes a widget refuses, with its reasons beside the fields. */
  readonly refused: string;
  /** Attributes that draw a warning or another rare view. */
  readonly warned: string;
  /** All that a course could fix. */
  readonly locked: string;
  /** What stands inside the tag. */
  readonly inside?: string;
  /** Buttons to press, by their words, before the state is reached. */
  readonly press?: { readonly [State in StateName]?: readonly string[] };
}

const place = 'latitude="48-17.0S" longitude="071-42.5W"';
const when = 'instant="2026-11-26T08:52:40Z"';
const wrongPlace = 'latitude="95N" longitude="17x"';
const wrongSight = `${wrongPlace} date="2026-13-41" time="25:10" bearing="400" heading="x" variation="3" card-deviation="200E" height-of-eye="-4"`;
const sightFields = 'latitude longitude date time heightOfEye compass bearing heading variation cardDeviation';
const coefficients = '{"kind":"approximate","coefficients":{"A":0.4,"B":2.6,"C":-1.8,"D":1.5,"E":0.3}}';
const large = '{"kind":"exact","coefficients":{"A":0.01,"B":0.42,"C":-0.31,"D":0.12,"E":0.02}}';
const table = '000 0.5W&#10;045 1.5W&#10;090 2.5W&#10;135 1.0W&#10;180 1.0E&#10;225 2.0E&#10;270 2.5E&#10;315 1.0E';
const swung = '000&#9;0.9W&#10;022.5&#9;0.7E&#10;045&#9;2.6E&#10;067.5&#9;3.4E&#10;090&#9;2.5E&#10;112.5&#9;2.2E&#10;135&#9;2.3E&#10;157.5&#9;2.1E&#10;180&#9;2.1E&#10;202.5&#9;2.5E&#10;225&#9;1.4E&#10;247.5&#9;3.3E&#10;270&#9;2.2W&#10;292.5&#9;4.0W&#10;315&#9;4.3W&#10;337.5&#9;2.9W';
const correctors = '{"foreAndAft":{"what":"2","end":"red-forward","distance":"31 cm"}}';

export const subjects: Readonly<Record<string, Subject>> = {
  'lubber-amplitude': {
    answered: `${place} ${when} height-of-eye="18" bearing="113.5" heading="040" card-deviation="1.4W"`,
    refused: wrongSight,
    warned: `${place} instant="2026-11-26T11:52:40Z" bearing="313.5" heading="040" card-deviation="9.5E"`,
    locked: `body moment ${sightFields}`,
  },
  'lubber-azimuth': {
    answered: `${place} instant="2026-11-26T08:20:00Z" body="Venus" bearing="083.4" heading="040" card-deviation="1.4W" series="08:19:10 083.2&#10;08:20:00 083.4&#10;08:20:50 083.6&#10;08:21:40 087.9"`,
    refused: `method="almanac" gha="400" declination="91N" series="083&#10;nonsense" ${wrongSight}`,
    warned: `${place} ${when} body="Sun" bearing="013.4" heading="040" card-deviation="9.4E"`,
    locked: `method body series ${sightFields}`,
  },
  'lubber-transit': {
    answered: `${place} ${when} charted="157.0" bearing="148.5" heading="040" card-deviation="1.4W"`,
    refused: `charted="400" ${wrongSight}`,
    warned: `${place} ${when} bearing="013.4" heading="040" marks='[{"kind":"two-marks","frontLatitude":"48-16.0S","frontLongitude":"071-40.0W","rearLatitude":"48-15.0S","rearLongitude":"071-38.0W","bearing":"250"},{"kind":"charted","charted":"157","bearing":"148"}]'`,
    locked: `charted marks ${sightFields}`,
  },
  'lubber-variation': {
    answered: `${place} date="2026-11-26" rose="10°40′E 2023 (7′W)"`,
    refused: `${wrongPlace} date="2026-13-41" rose="ten degrees"`,
    warned: 'latitude="84N" longitude="150E" date="2026-11-26" rose="10°40′E 2003 (7′W)"',
    locked: 'latitude longitude date time rose model roseVariation roseYear roseChange',
  },
  'lubber-conversion': {
    answered: `kind="bearing" heading="278.4" bearing="084" variation="9W" gyro-error="1E" by-hand="100" deviation="5E" look-gyro="272" look-standard="278" look-steering="281"`,
    refused: `heading="400" variation="12" deviation="x" gyro-error="200E" leeway="95" by-hand="abc" speed="-3"`,
    warned: `heading="350" variation="12E" card='${large}' deviation-source="card" speed="20" latitude="60N" heading-by="true" by-hand="010"`,
    locked: 'kind heading headingBy bearing bearingBy variation source deviation gyroError leeway wind byHand speed latitude lookGyro lookStandard lookSteering',
  },
  'lubber-swing': {
    answered: `headings="16" rows="${swung}" ${place} date="2026-11-26" card='${coefficients}'`,
    refused: `method="known-object" object-bearing="400" variation="17 somewhere" latitude="95N" rows="400&#9;78.5&#10;090&#9;east"`,
    // An adjuster's: as found and as left, both compasses, the correctors; one head of the steering compass out of range.
    warned: `headings="8" stage="left" compasses="two" found-rows="000&#9;2E&#9;358&#10;045&#9;3E&#9;040&#10;090&#9;1W&#9;088&#10;180&#9;2W&#9;179&#10;270&#9;1E&#9;271" rows="000&#9;9.1E&#9;002&#10;045&#9;12.6E&#9;047&#10;090&#9;14.0E&#9;400&#10;135&#9;2.2W&#9;133" correctors='{"foreAndAft":{"what":"2 of 20 cm","end":"red-aft","distance":"31 cm"}}' ${place} date="2026-11-26"`,
    locked: 'rows method headingBy headings variation latitude longitude date objectBearing objectBy constant model limit correctors stage',
  },
  'lubber-deviation-curve': {
    answered: `card='${coefficients}' before-card='{"kind":"approximate","coefficients":{"A":0.4,"B":6.1,"C":-4.2,"D":3.5,"E":0.3}}' points='[{"heading":0,"deviation":-0.9},{"heading":90,"deviation":2.9},{"heading":180,"deviation":2.4},{"heading":270,"deviation":-2.0}]' heading="090"`,
    refused: 'table="000 1&#10;400 2W&#10;north" heading="400"',
    warned: 'card=\'{"kind":"approximate","coefficients":{"A":0,"B":0,"C":0,"D":35,"E":0}}\' heading="090"',
    locked: 'card table model limit heading',
  },
  'lubber-deviation-card': {
    answered: `card='${coefficients}' vessel="m.v. Halcyon Tern" compass-name="Standard" place="Port Averil" date="2026-02-11" today="2026-11-25" horizontal="21.4" vertical="-33.1" remarks="Upright, derricks stowed." correctors='${correctors}'`,
    refused: 'table="000 1&#10;400 2W&#10;north" date="2026-13-41" horizontal="x" vertical="y"',
    warned: `format="pocket" every="15" card='${large}' vessel="m.v. Halcyon Tern" date="2024-02-11" today="2026-11-25"`,
    locked: 'card table format every limit vessel compassName serial place date horizontal vertical correctors remarks',
  },
  'lubber-iron': {
    answered: 'state="c=0.08&amp;P=2&amp;slipHeading=180" latitude="43-30S" longitude="149-00E" date="2026-07-01"',
    refused: 'state="c=x&amp;P=2000&amp;view=iron" latitude="95N" longitude="17x" date="2026-13-41" heading="400"',
    warned: 'state="c=0.4&amp;P=30&amp;Q=-12&amp;view=voyage" latitude="83N" longitude="100E" date="2026-07-01"',
    locked: 'latitude longitude date heading heel P Q R a b c d e f g h k preset',
  },
  'lubber-field-map': {
    answered: 'date="2026-11-26" latitude="48-17.0S" longitude="071-42.5W"',
    refused: 'date="2026-13-41" latitude="95N" longitude="17x"',
    warned: 'date="2026-11-26" lines="horizontal" view="north" latitude="84N" longitude="150E"',
    locked: 'date latitude longitude lines view',
  },
  'lubber-record': {
    answered: 'book="scene" observer="E. M."',
    refused: 'book="scene of errors" observer="E. M." date="2026-13-41" time="25:10" latitude="95N" longitude="17x" heading-standard="400" bearing="x" variation="3"',
    warned: 'book="scene" observer="E. M." entry="event" page-size="5"',
    locked: 'observer date time latitude longitude headingStandard bearing variation entry bearingBy watch',
  },
  'lubber-drill': {
    answered: 'kind="amplitude card polarity" level="2" count="3" seed="4711"',
    refused: 'kind="conversion" level="1" count="3" seed="4711"',
    warned: 'kind="card azimuth" level="2" count="2" seed="4711" view="key"',
    locked: 'kind',
    press: { answered: ['Show the answer'], refused: ['Mark it', 'Hint'] },
  },
  'lubber-ship': {
    answered: `name="m.v. Halcyon Tern" compass-name="standard" ${place} ${when} height-of-eye="18" heading="040" table="${table}"`,
    refused: `${wrongPlace} date="2026-13-41" heading="400" variation="3" height-of-eye="-4" table="000 1&#10;north"`,
    warned: `name="m.v. Halcyon Tern" ${place} card='${coefficients}'`,
    locked: 'latitude longitude date time heightOfEye heading variation table cardForm',
  },
};

export interface Scene {
  readonly tag: string;
  readonly state: StateName;
  readonly html: string;
  readonly press: readonly string[];
}

export function scene(tag: string, state: StateName): Scene {
  const subject = subjects[tag];
  if (!subject) throw new Error(`no scene for ${tag}`);
  const { answered, refused, warned, locked, press = {} } = subject;
  const attributes = {
    empty: '',
    refused,
    answered: `${answered} working="open"`,
    locked: `${answered} locked="${locked}"`,
    hidden: `${answered} answer="hidden"`,
    warned,
  }[state];
  return { tag, state, html: `<${tag} ${attributes}></${tag}>`, press: press[state] ?? [] };
}

export const scenes: readonly Scene[] = Object.keys(subjects).flatMap((tag) => stateNames.map((state) => scene(tag, state)));
