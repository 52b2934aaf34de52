/** What the launch address of a cmi5 lesson carries (cmi5 8.1). */
export interface Cmi5Launch {
  /** Of the record store, ending with a slash. */
  readonly endpoint: string;
  /** Where the token is fetched, once. */
  readonly fetch: string;
  /** The learner, as the platform names them; sent back as it is. */
  readonly actor: Readonly<Record<string, unknown>>;
  readonly registration: string;
  readonly activityId: string;
}

/** The launch data in a page's address; null where it was not launched by a cmi5 platform. */
export function readLaunch(search: string): Cmi5Launch | null {
  const query = new URLSearchParams(search);
  const [endpoint, fetch, actor, registration, activityId] = ['endpoint', 'fetch', 'actor', 'registration', 'activityId'].map((name) => query.get(name) ?? '');
  if (!endpoint || !fetch || !actor || !registration || !activityId) return null;
  try {
    const read = JSON.parse(actor) as unknown;
    if (typeof read !== 'object' || read === null || Array.isArray(read)) return null;
    return { endpoint: endpoint.replace(/\/*$/, '/'), fetch, actor: read as Cmi5Launch['actor'], registration, activityId };
  } catch {
    return null;
  }
}

/** What the platform keeps for the lesson under `LMS.LaunchData` (cmi5 10.2). */
export interface LaunchData {
  readonly contextTemplate: Readonly<Record<string, unknown>>;
  readonly launchMode: 'Normal' | 'Browse' | 'Review';
  /** 0 to 1; null where the platform sets none. */
  readonly masteryScore: number | null;
  readonly returnURL: string | null;
}

const isBag = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

/** The launch data a platform answered, its own parts only; null where it is none. */
export function readLaunchData(value: unknown): LaunchData | null {
  if (!isBag(value) || !isBag(value['contextTemplate'])) return null;
  const { contextTemplate, launchMode, masteryScore, returnURL } = value;
  return {
    contextTemplate,
    launchMode: launchMode === 'Browse' || launchMode === 'Review' ? launchMode : 'Normal',
    masteryScore: typeof masteryScore === 'number' && masteryScore >= 0 && masteryScore <= 1 ? masteryScore : null,
    returnURL: typeof returnURL === 'string' && returnURL !== '' ? returnURL : null,
  };
}
