import { keepWords } from './keep-words';

/** Why a save failed, in plain words. */
export function describeFailure(error: unknown): string {
  return isFull(error) ? keepWords.full : keepWords.failed;
}

/** Whether the storage is full. Browsers report it by this name, some as the reason why a transaction was aborted. */
export function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}
