import type { Access } from '../rows/row';
import type { Figure, FigureMaker } from './figure';
import { balanceFigures } from './figures/balance';
import { bottleFigures } from './figures/bottle';
import { jarFigures } from './figures/jar';
import { ripeningFigures } from './figures/ripening';
import { sugarFigures } from './figures/sugar';
import { yieldFigures } from './figures/yield';

const table: Readonly<Record<string, FigureMaker>> = {
  ...jarFigures,
  ...balanceFigures,
  ...yieldFigures,
  ...sugarFigures,
  ...ripeningFigures,
  ...bottleFigures,
};

/** Whether a figure has that name. */
export function isFigure(id: string): boolean {
  return Object.hasOwn(table, id);
}

/** A figure that formulas name beside terms and coefficients; undefined where none has that name. */
export function findFigure(id: string, x: Access): Figure | undefined {
  return isFigure(id) ? table[id]?.(x) : undefined;
}
