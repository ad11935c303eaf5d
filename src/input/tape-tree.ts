/** The value of a parsed sum of lengths, exactly, with its dimension checked at every step. */

import { createRequire } from 'node:module';
import type * as MathModule from 'mathjs';
import type { Fraction, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import type { Problem } from '../reply/reply.ts';
import { dividedByZero, type Got, noSuchThing, unlikeThings } from '../text/length-problems-text.ts';
import { noteBare } from './length.ts';
import { type LengthUnit, UNITS } from './length-units.ts';
import type { Reading } from './reading.ts';
import type { Terms } from './tape-terms.ts';

/** An exact amount in ticks to the `power`: 0 a number, 1 a length, 2 an area. */
export interface Value {
  readonly amount: Fraction;
  readonly power: number;
  /** What was typed, when it is only numbers without units added up: next to a length they are lengths. */
  readonly bare?: string;
}

/** The surroundings of one sum. */
export interface Sum {
  readonly reading: Reading;
  readonly bare: LengthUnit;
  readonly got: Got;
  readonly example: string;
}

/** What of mathjs a sum needs: the parse tree and exact fractions, nothing that computes. */
type Arithmetic = Pick<MathModule.MathJsInstance, 'parse' | 'fraction'>;

let loaded: Arithmetic | undefined;

/** Loaded with the first sum, which most asks never are, and from mathjs's one file: its thousand files take four times as long. */
function arithmetic(): Arithmetic {
  if (loaded) return loaded;
  const { create, parseDependencies, fractionDependencies } = createRequire(import.meta.url)(
    'mathjs/lib/browser/math.js',
  ) as typeof MathModule;
  loaded = create({ ...parseDependencies, ...fractionDependencies } as MathModule.FactoryFunctionMap);
  return loaded;
}

/** What the terms come to, or the Problem that stops them. Throws an Error for a structure that is more than arithmetic. */
export function totalOf(terms: Terms, sum: Sum): Value | Problem {
  return valueAt(arithmetic().parse(terms.structure), terms, sum);
}

/** `value` as a length when it is numbers without units, which is noted; anything else stays what it is. */
export function asLength(value: Value, { bare, reading }: Sum): Value {
  if (value.bare === undefined) return value;
  noteBare(value.bare, bare, value.amount.abs().lte(1), reading);
  return { amount: value.amount.mul(UNITS[bare].ticks), power: 1 };
}

function valueAt(node: MathNode, terms: Terms, sum: Sum): Value | Problem {
  if (isParenthesis(node)) return valueAt(node.content, terms, sum);
  if (isSymbol(node)) {
    const quantity = terms.quantities[Number(node.name.slice(1))];
    if (!quantity) throw new Error(`no quantity for the symbol ${node.name}`);
    const { top, bottom, power, typed } = quantity;
    return { amount: arithmetic().fraction(top, bottom), power, ...(power === 0 && { bare: typed }) };
  }
  if (!isOperator(node)) throw new Error(`more than arithmetic: ${node.type}`);
  const [first, second] = node.args;
  const left = first && valueAt(first, terms, sum);
  if (!left || 'expected' in left) return left ?? missing(node.type);
  const sign: string = node.fn;
  if (sign === 'unaryPlus') return left;
  if (sign === 'unaryMinus') {
    return { ...left, amount: left.amount.neg(), ...(left.bare !== undefined && { bare: `-${left.bare}` }) };
  }
  const right = second && valueAt(second, terms, sum);
  if (!right || 'expected' in right) return right ?? missing(node.type);
  if (sign === 'add' || sign === 'subtract') return added(left, right, sign, sum);
  if (sign === 'multiply') return multiplied(left, right, sum);
  if (sign === 'divide') return divided(left, right, sum);
  throw new Error(`more than arithmetic: ${sign}`);
}

function added(left: Value, right: Value, sign: 'add' | 'subtract', sum: Sum): Value | Problem {
  const [from, by] = [right.power === 1 ? asLength(left, sum) : left, left.power === 1 ? asLength(right, sum) : right];
  if (from.power !== by.power) {
    const deed = sign === 'add' ? `adds ${kind(by)} to ${kind(from)}` : `takes ${kind(by)} from ${kind(from)}`;
    return unlikeThings(sum.got, deed, sum.example);
  }
  const amount = sign === 'add' ? from.amount.add(by.amount) : from.amount.sub(by.amount);
  if (from.bare === undefined || by.bare === undefined) return { amount, power: from.power };
  return { amount, power: 0, bare: `${from.bare} ${sign === 'add' ? '+' : '-'} ${by.bare}` };
}

function multiplied(left: Value, right: Value, sum: Sum): Value | Problem {
  const power = left.power + right.power;
  if (power > 2) return noSuchThing(sum.got, `multiplies ${kind(left)} by ${kind(right)}`, sum.example);
  return { amount: left.amount.mul(right.amount), power };
}

function divided(left: Value, right: Value, sum: Sum): Value | Problem {
  if (right.amount.equals(0)) return dividedByZero(sum.got, sum.example);
  const power = left.power - right.power;
  if (power < 0) return noSuchThing(sum.got, `divides ${kind(left)} by ${kind(right)}`, sum.example);
  return { amount: left.amount.div(right.amount), power };
}

function kind({ power }: Value): string {
  return power === 0 ? 'a number' : power === 1 ? 'a length' : 'an area';
}

function missing(type: string): never {
  throw new Error(`a sign without its values: ${type}`);
}

const isParenthesis = (node: MathNode): node is ParenthesisNode => node.type === 'ParenthesisNode';
const isSymbol = (node: MathNode): node is SymbolNode => node.type === 'SymbolNode';
const isOperator = (node: MathNode): node is OperatorNode => node.type === 'OperatorNode';
