import { useEffect } from 'preact/hooks';

/** Keeps the screen awake for as long as it is wanted and the page is in sight, where the browser can. */
export function useAwake(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !canStayAwake()) return;
    let lock: WakeLockSentinel | null = null;
    let isGone = false;
    const ask = async () => {
      // It ends by itself whenever the page is out of sight, and may be refused, as with a battery that is low.
      if (document.visibilityState !== 'visible' || lock?.released === false) return;
      const got = await navigator.wakeLock.request('screen').catch(() => null);
      if (isGone) void got?.release();
      else lock = got;
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      isGone = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [isWanted]);
}

/** Whether this browser can keep a screen awake at all. */
export function canStayAwake(): boolean {
  return 'wakeLock' in navigator;
}
