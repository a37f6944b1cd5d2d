import { useEffect, useState } from 'preact/hooks';
import { now } from '../../batch/reading/local-time';
import type { Instant } from '../../formula/time/event';

const minute = 60_000;

/** The time it is, anew each minute: what is past, what is late and how long it has been depends on it. */
export function useMinutes(): Instant {
  const [at, setAt] = useState(now);
  useEffect(() => {
    const timer = setInterval(() => setAt(now()), minute);
    return () => clearInterval(timer);
  }, []);
  return at;
}
