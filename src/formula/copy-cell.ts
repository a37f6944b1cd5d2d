import { grains } from '../reference/grains';
import { jars } from '../reference/jars';
import { sweeteners } from '../reference/sweeteners';
import { isRow } from './evaluate';
import type { Formulation } from './formulate';
import type { RowId } from './order';
import { type Kitchen, writeRow } from './write-row';

/**
 * A cell as it is copied: a choice by its name, an amount in metric with its unit, so that any spreadsheet and this
 * sheet can read it. Empty where there is nothing.
 */
export function copyCell(formulation: Formulation, id: RowId, kitchen: Kitchen): string {
  if (isRow(id)) {
    const written = writeRow(formulation, id, kitchen);
    return written === null ? '' : plain(written.metric);
  }
  const { recipe, choices } = formulation;
  switch (id) {
    case 'vessel':
      return jars[recipe.vessel].name;
    case 'source':
      return choices.source.name;
    case 'grains':
      return grains[recipe.grains].name;
    default:
      return recipe.sweetener.map((part) => sweeteners[part.id].name).join(' + ');
  }
}

/** Ordinary spaces, and without the share that a room is written with. */
function plain(text: string): string {
  return text.replaceAll(/[\u00A0\u202F\u2009]/g, ' ').replace(/ \(.*\)$/, '');
}
