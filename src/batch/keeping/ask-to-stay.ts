/** What of a browser is asked; each part may be missing. */
export interface Asked {
  readonly storage?: Pick<StorageManager, 'persist' | 'persisted'>;
  readonly permissions?: Pick<Permissions, 'query'>;
}

/**
 * Asks the browser not to clear what is kept when room runs out. Browsers that decide by themselves are asked each
 * time; one that would put the question to the cook asks it once, when a sheet is kept for the first time (`isFirst`).
 * Never rejects: whatever the answer, the sheet is kept as long as the browser likes.
 */
export async function askToStay({ storage, permissions }: Asked, isFirst: boolean): Promise<void> {
  try {
    if (storage?.persist === undefined || (await storage.persisted())) return;
    const state = await stateOf(permissions);
    if (state === 'denied' || (state === 'prompt' && !isFirst)) return;
    await storage.persist();
  } catch {
    // Then it stays as it was.
  }
}

/** A browser that does not know this permission asks nobody. */
async function stateOf(permissions: Asked['permissions']): Promise<PermissionState> {
  try {
    return (await permissions?.query({ name: 'persistent-storage' }))?.state ?? 'granted';
  } catch {
    return 'granted';
  }
}
