import { writeUnrounded } from '../../measure/write-unrounded';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sweeteners } from '../../reference/sweeteners';
import { isRow } from '../engine/evaluate';
import type { Formulation } from '../engine/formulate';
import type { RowId } from '../recipe/order';
import { numericRows } from '../rows/sheet';
import type { Kitchen } from './write-row';

/**
 * A cell as it is copied: a choice by its name, an amount in metric with its unit, unrounded, so that any spreadsheet
 * and this sheet can read it and it comes back the same. Empty where there is nothing.
 */
export function copyCell(formulation: Formulation, id: RowId, kitchen: Pick<Kitchen, 'decimalComma'>): string {
  if (isRow(id)) {
    const { value } = formulation.rows[id];
    const { kind, unit = '' } = numericRows[id];
    return typeof value === 'number' ? `${writeUnrounded(value, kind, kitchen.decimalComma)} ${unit}`.trim() : '';
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
