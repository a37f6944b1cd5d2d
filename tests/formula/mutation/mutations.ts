import { slots } from '../../../src/formula/engine/slots';
import { coefficientIds } from '../../../src/formula/recipe/coefficients';
import { figureValues } from '../../../src/formula/rows/figure-values';
import { findSyntax, isSyntax, type Syntax } from '../../source-code';

/** One place of a script changed. */
export interface Mutation {
  readonly how: string;
  readonly start: number;
  readonly end: number;
  readonly by: string;
}

const operators: Readonly<Record<string, string>> = {
  ...{ '+': '-', '-': '+', '*': '/', '/': '*', '**': '*', '%': '*' },
  ...{ '<': '>=', '>': '<=', '<=': '>', '>=': '<', '===': '!==', '!==': '===', '&&': '||', '||': '&&' },
};
const inFormulas: Readonly<Record<string, string>> = { '+': '−', '−': '+', '×': '÷', '÷': '×', '^': '×' };
const named: Readonly<Record<string, string>> = {
  max: 'min',
  min: 'max',
  ceil: 'floor',
  floor: 'ceil',
  round: 'floor',
};

/** What a formula can name, each sort in its order; another of the same sort stands in for one. */
const sorts: readonly (readonly string[])[] = [[...slots.keys()], coefficientIds, Object.keys(figureValues)];

function otherName(name: string): string | undefined {
  const sort = sorts.find((names) => names.includes(name));
  return sort?.[(sort.indexOf(name) + 1) % sort.length];
}

/** The mutations of a text with formulas in it: each sign turned, each name exchanged, each word at an end left out. */
function inText(text: string): readonly Omit<Mutation, 'how'>[] {
  if (!/\{\w+\}/.test(text)) return [];
  const signs = /[+−×÷^]|\{(\w+)\}|, (?:if above 0|never below 0|at least 1|rounded up|rounded)/g;
  return [...text.matchAll(signs)].flatMap((match) => {
    const [found, name] = match;
    const other = name === undefined ? undefined : otherName(name);
    const by = name === undefined ? (inFormulas[found] ?? '') : other && `{${other}}`;
    return by === undefined ? [] : [{ start: match.index, end: match.index + found.length, by }];
  });
}

/** The operator that stands between two nodes. */
function between(text: string, left: unknown, right: unknown, operator: string): number | null {
  if (!isSyntax(left) || !isSyntax(right) || typeof left.end !== 'number') return null;
  const at = text.slice(left.end, right.start).indexOf(operator);
  return at < 0 ? null : left.end + at;
}

function ofNode(node: Syntax, text: string): readonly Omit<Mutation, 'how'>[] {
  const { type, start, end, operator } = node;
  if (typeof end !== 'number') return [];
  if ((type === 'BinaryExpression' || type === 'LogicalExpression') && typeof operator === 'string') {
    const [by, at] = [operators[operator], between(text, node.left, node.right, operator)];
    return by === undefined || at === null ? [] : [{ start: at, end: at + operator.length, by }];
  }
  if (type === 'UnaryExpression' && (operator === '-' || operator === '!')) return [{ start, end: start + 1, by: '' }];
  if (type === 'MemberExpression' && isSyntax(node.property)) {
    const { name, start: from } = node.property;
    const by = typeof name === 'string' && text.slice(start, from) === 'Math.' ? named[name] : undefined;
    return by === undefined ? [] : [{ start: from, end, by }];
  }
  if (type === 'CallExpression' && Array.isArray(node.arguments)) return ofArguments(node.arguments);
  if ((type === 'Literal' && typeof node.value === 'string') || type === 'TemplateElement')
    return inText(text.slice(start, end)).map((one) => ({ ...one, start: start + one.start, end: start + one.end }));
  return [];
}

/** The name of a quantity that is asked for, exchanged with another. */
function ofArguments(given: readonly unknown[]): readonly Omit<Mutation, 'how'>[] {
  return given.filter(isSyntax).flatMap(({ type, start, end, value }) => {
    const by = type === 'Literal' && typeof value === 'string' ? otherName(value) : undefined;
    return by === undefined || typeof end !== 'number' ? [] : [{ start, end, by: `"${by}"` }];
  });
}

/** The file that each place of a script is of, which a line before it names. */
function filesOf(script: string): (place: number) => string {
  const heads = [...script.matchAll(/^\/\/ (\S+)$/gm)].map(({ 1: file = '', index }) => ({ file, index }));
  return (place) => heads.findLast(({ index }) => index < place)?.file ?? '';
}

/** Every operator, sign, comparison and name of the engine and its formulas changed, one at a time. */
export function mutationsOf(script: string): readonly Mutation[] {
  const fileAt = filesOf(script);
  return findSyntax({ path: 'script.js', text: script }).flatMap(({ node }) => {
    const file = fileAt(node.start);
    if (!/^src\/formula\/(engine|rows|models|composition)\//.test(file)) return [];
    return ofNode(node, script).map((one) => {
      const [before, after] = [script.slice(one.start - 50, one.start), script.slice(one.end, one.end + 50)];
      const line = `${before.slice(before.lastIndexOf('\n') + 1)}⟨${script.slice(one.start, one.end)} → ${one.by}⟩${after.split('\n')[0]}`;
      return { ...one, how: `${file}: ${line.trim()}` };
    });
  });
}
