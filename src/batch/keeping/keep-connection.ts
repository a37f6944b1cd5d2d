import { type Database, openDatabase, type Watch } from './keep-database';

export interface Connection {
  /** The open database; opens it where it is not. Rejects as `openDatabase` does. */
  readonly connect: () => Promise<Database>;
  readonly disconnect: () => Promise<void>;
  /** Whether it is open, or about to be. */
  readonly isOpen: () => boolean;
}

/** The one connection that a window has to the database. */
export function createConnection(watch: Watch): Connection {
  // The promise is remembered, not what it gives: two that ask at once must not open two.
  let connected: Promise<Database> | null = null;
  return {
    connect() {
      connected ??= openDatabase(watch).catch((error: unknown) => {
        connected = null;
        throw error;
      });
      return connected;
    },
    async disconnect() {
      const closing = connected;
      connected = null;
      (await closing?.catch(() => null))?.close();
    },
    isOpen: () => connected !== null,
  };
}
