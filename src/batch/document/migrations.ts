/** The version of the document that this page writes. */
export const currentVersion = 2;

/** The hours a sheet calls night until the cook says otherwise. */
export const usualNight = { from: '22:00', to: '07:00' } as const;

type Data = Readonly<Record<string, unknown>>;

/** From each older version to the one after it; each is right for good, once a sheet of that version may exist. */
const migrations: Readonly<Record<number, (data: Data) => Data>> = {
  // The second version keeps a log of what was found at the jars, and the hours of the night.
  1: (data) => ({
    ...data,
    version: 2,
    log: 'log' in data ? data.log : [],
    settings: isData(data.settings) ? { quiet: usualNight, ...data.settings } : data.settings,
  }),
};

/** Data of an older version as this one writes it; the very data where it is of this version, or of none we know. */
export function migrate(data: unknown): unknown {
  if (!isData(data) || typeof data.version !== 'number') return data;
  const step = Object.hasOwn(migrations, data.version) ? migrations[data.version] : undefined;
  return step === undefined ? data : migrate(step(data));
}

function isData(data: unknown): data is Data {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}
