import { readFileSync } from 'node:fs';
import { describe } from 'vitest';
import { weighScripts, writeWeight } from '../weigh-scripts';
import { report } from './in-turn';

const dist = process.env.DIST ?? 'dist';

describe('what the page loads before anyone touches it', () => {
  report('script, gzip', () => writeWeight(weighScripts((path) => readFileSync(`${dist}/${path}`, 'utf8'))));
});
