import { configureGlobal } from 'fast-check';

// The gate draws the same cases at each run, so that red means a change; `npm run fresh` draws new ones and prints the seed.
const drawn = process.env.FRESH ? undefined : { seed: 20261129 };
configureGlobal({ ...drawn });
