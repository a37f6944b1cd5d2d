import type { Batch, SheetDocument } from '../src/batch/document/document';
import { recipeOf } from '../src/batch/document/document';
import { cartonRecords, cartonWarning } from '../src/batch/edits/carton-edits';
import { expectedHours, hoursOf, looksOf, teachersByEntry, typedFactors } from '../src/batch/edits/log-edits';
import { describeEntry, whyNotAcid, whyUnlearned } from '../src/batch/edits/log-words';
import { adviceFor } from '../src/batch/edits/next-batch';
import { takeChanges } from '../src/batch/edits/take-changes';
import { cellProblem, cellRemark } from '../src/batch/reading/cell-problem';
import { planBatches, planFor, plannedDay } from '../src/batch/store/plan-batches';
import { createStore } from '../src/batch/store/store';
import { cautionTopics } from '../src/formula/advice/caution-conditions';
import { allergensOf, cautionsAbout, cautionsAt } from '../src/formula/advice/cautions';
import { largestBatch, makeFrom, stockProblem } from '../src/formula/advice/on-hand';
import { scaleTo } from '../src/formula/advice/scale-to';
import { swapsFor } from '../src/formula/advice/swap';
import { waysOut } from '../src/formula/advice/ways-out';
import { batchCost } from '../src/formula/cost/batch-cost';
import { compareSources } from '../src/formula/cost/compare-sources';
import { describeMissing, tellCost, tellUnitPrice } from '../src/formula/cost/cost-words';
import { foodOfKey } from '../src/formula/cost/food-of-key';
import { currencyOf, inCoins, writeMoney } from '../src/formula/cost/money';
import { priceOf } from '../src/formula/cost/package-price';
import { shoppingList, toShopFor } from '../src/formula/cost/shopping-list';
import { tellShopping, writeShoppingText } from '../src/formula/cost/shopping-words';
import { sweetenerCosts } from '../src/formula/cost/sweetener-cost';
import { isRow } from '../src/formula/engine/evaluate';
import { type Formulation, formulate } from '../src/formula/engine/formulate';
import { fizzOf, tightLidOf } from '../src/formula/fizz/fizz';
import {
  adviseFizz,
  describeBound,
  describeFizz,
  describePlanned,
  describeTightLid,
  explainFizz,
  explainVerdict,
  nameLine,
  writeLikely,
  writePlace,
  writePressure,
  writeRange,
  writeStanding,
  writeVerdict,
  writeVolumes,
} from '../src/formula/fizz/fizz-words';
import { fateAfterBottle, fateOfFirst } from '../src/formula/fizz/sugar-fate';
import { describeAlcohol, describeNoSecond, describeSweetness, fateLines } from '../src/formula/fizz/sugar-fate-words';
import { glassLines, tellAlcohol, tellKilojoules } from '../src/formula/glass/glass-words';
import { glassWorking } from '../src/formula/glass/glass-working';
import { inKefir } from '../src/formula/glass/in-a-glass';
import { pulpOf } from '../src/formula/glass/in-the-bag';
import {
  besideMeasured,
  describeKeeping,
  describePulp,
  describePulpAllergens,
  describeShare,
  keepingOrigin,
  usesOfPulp,
} from '../src/formula/glass/pulp-words';
import { secondHoursOf } from '../src/formula/plan/schedule';
import { measuredRows, rowOrder, stockIds } from '../src/formula/recipe/order';
import type { TermId } from '../src/formula/rows/row';
import { intermediateIds } from '../src/formula/rows/terms';
import { drawJar } from '../src/formula/steps/drawing';
import { flowsOf } from '../src/formula/steps/flows';
import { worstError } from '../src/formula/steps/kit-error';
import { labelDaysOf, labelOfBatch } from '../src/formula/steps/label-text';
import { stepsOf } from '../src/formula/steps/steps';
import { describeRecord } from '../src/formula/time/carton-words';
import { learnPaces } from '../src/formula/time/learn-pace';
import { describeNext, describeNextTime } from '../src/formula/time/next-batch-words';
import { describeSources, describeTaught } from '../src/formula/time/pace-words';
import { readyIn } from '../src/formula/time/ready-in';
import { wayToBeReady } from '../src/formula/time/ready-in-way';
import { ripeningAgainstRoom } from '../src/formula/time/ripening-chart';
import { describeChart, describeReady, ripeningLines } from '../src/formula/time/ripening-words';
import { waitingOf } from '../src/formula/time/waiting';
import { describeWaiting } from '../src/formula/time/waiting-words';
import { rowsThatDiffer } from '../src/formula/words/compare';
import { copyCell } from '../src/formula/words/copy-cell';
import { compareRow } from '../src/formula/words/difference';
import { describeCoefficient } from '../src/formula/words/origin-words';
import { describeProblem } from '../src/formula/words/words';
import { type Kitchen, writeRow } from '../src/formula/words/write-row';
import { coefficientsOf, compositionOf, sugarFacts } from '../src/formula/working/choice-figures';
import { findMeasured } from '../src/formula/working/keep-measured';
import { workingOf } from '../src/formula/working/working';
import { inNumbers, inSymbols, writeCoefficient, writeInput, writeResult } from '../src/formula/working/working-text';
import { readAddition } from '../src/interchange/bottle-addition';
import { writeBatchesCsv, writeLogCsv } from '../src/interchange/csv-file';
import { onlyBatches, writeCopy } from '../src/interchange/json-file';
import { writePricesCsv, writeShoppingCsv } from '../src/interchange/money-csv';
import { recipeMarkup, writeMarkupSnippet } from '../src/interchange/recipe-markup';
import { writeRecipe } from '../src/interchange/recipe-out';
import { plainFragment } from '../src/interchange/share-link';
import { drawFizz } from '../src/ui/fizz/fizz-picture';
import { describeJar } from '../src/ui/jar/describe-jar';
import { eventsFor } from '../src/ui/plan/events-for';
import { drawPlanned } from '../src/ui/plan/timeline-picture';
import { stepAmounts } from '../src/ui/steps/step-amounts';
import { drawRipening } from '../src/ui/time/ripening-picture';

/** A text or number that the page, a file or the paper would show, and where it is from. */
export interface Said {
  readonly where: string;
  readonly what: unknown;
}

/** Everything that can be had of a document in words, numbers and drawings, the links and files made from it included. */
export function everythingSaid(document: SheetDocument): readonly Said[] {
  const store = createStore(document);
  const { formulationOf } = store;
  const { settings } = document;
  const planned = planBatches(document, formulationOf);
  return [
    ...document.batches.flatMap((batch) => {
      const formulation = formulationOf(batch);
      const about = [
        ...ofRows(batch, formulation, settings),
        ...ofChoices(formulation, settings),
        ...ofTime(document, batch, formulation),
        ...ofBottle(document, batch, formulation),
        ...ofMaking(batch, formulation, settings),
        ...ofOthers(document, batch, formulation),
        ...ofMoney(document, batch, formulation),
        ...ofGlass(formulation, settings),
      ];
      return about.map(({ where, what }) => ({ where: `${batch.id} ${where}`, what }));
    }),
    ...saidOf('rows that differ', [...rowsThatDiffer(document.batches.map(formulationOf), document.settings)]),
    ...saidOf('plan', drawPlanned(planned)),
    ...planned.clashes.told.flatMap((clash) => saidOf('clash', clash)),
    ...planned.plans.flatMap(({ batch, plan }) => saidOf('events', eventsFor(batch, plan, store))),
    ...saidOf('log', [
      ...document.log.map((entry) => [
        describeEntry(entry, settings),
        whyUnlearned(entry),
        whyNotAcid(entry, settings),
      ]),
      ...taughtBy(document),
    ]),
    ...saidOf('money tables', [writePricesCsv(document.packages ?? [], currencyOf(settings.currency))]),
    ...saidOf('tables', [writeBatchesCsv(document.batches, formulationOf), writeLogCsv(document.log)]),
    ...saidOf(
      'files',
      [writeCopy(document), writeCopy(onlyBatches(document, new Set(['b1'])))].map((text) => text.length),
    ),
  ];
}

/** What the log teaches, says of the next batch of each, and has found of cartons. */
function taughtBy(document: SheetDocument): readonly unknown[] {
  const { batches, settings, yours } = document;
  const teachers = teachersByEntry(document);
  const paces = learnPaces([...teachers.values()], typedFactors(yours));
  return [
    ...(paces === null ? [] : [[...paces.factors], describeTaught(paces, settings), describeSources(paces, settings)]),
    ...batches.flatMap((batch) => {
      const advice = adviceFor(document, batch, { paces, teachers });
      const next = advice?.next.map((one) => [
        describeNext(one, settings),
        describeNextTime(one.after, advice.was, settings),
      ]);
      return [next, cartonWarning(document, batch)];
    }),
    ...[...cartonRecords(document).values()].map((record) => describeRecord(record, settings.decimalComma)),
  ];
}

/** Every text and number within, each with the path to it. */
export function saidOf(where: string, within: unknown): readonly Said[] {
  if (typeof within === 'string' || typeof within === 'number') return [{ where, what: within }];
  if (typeof within !== 'object' || within === null) return [];
  return Object.entries(within).flatMap(([key, inner]) => saidOf(`${where} ${key}`, inner));
}

const unseen = /\b(?:NaN|Infinity|undefined|null)\b|\[object |∞/;

/** What no cook may be shown: a number that is none, a word that only programs know, a blank where words should be. */
export function isUnfit({ what }: Said): boolean {
  if (typeof what === 'number') return !Number.isFinite(what);
  return typeof what === 'string' && unseen.test(what);
}

function ofRows(batch: Batch, formulation: Formulation, kitchen: SheetDocument['settings']): readonly Said[] {
  const { evaluation } = formulation;
  const rows = rowOrder.flatMap((id) => {
    const { from, problems, value, typed, planned, range } = formulation.rows[id];
    const told = problems.map((problem) => [
      problem,
      describeProblem(problem, kitchen),
      waysOut(problem, formulation).map((way) => [way, takeChanges(wrap(batch, kitchen), batch.id, way.changes)]),
    ]);
    const written = [writeRow(formulation, id, kitchen), copyCell(formulation, id, kitchen)];
    return [
      ...saidOf(id, { value, typed, planned, range }),
      ...saidOf(`${id} told`, told),
      ...saidOf(`${id} written`, written),
      ...saidOf(
        `${id} cautions`,
        cautionsAt(id, formulation).map(({ text }) => text),
      ),
      ...(from === null || !isRow(id) ? [] : ofWorking(id, formulation, kitchen)),
    ];
  });
  const cells = batch.given.flatMap((cell) =>
    saidOf(`${cell.row} cell`, [cellProblem(cell.row, cell, kitchen), cellRemark(cell.row, cell, kitchen)]),
  );
  const measured = measuredRows.flatMap((id) => saidOf(`${id} found`, findMeasured(id, formulation)));
  // A worked-out intermediate may be unknown, but its working must be there to be asked for.
  for (const id of intermediateIds) workingOf(id, evaluation);
  return [...rows, ...cells, ...measured];
}

function wrap(batch: Batch, settings: SheetDocument['settings']): SheetDocument {
  return { version: 2, batches: [batch], yours: {}, settings, log: [] };
}

function ofWorking(id: TermId, formulation: Formulation, { decimalComma }: Kitchen): readonly Said[] {
  const working = workingOf(id, formulation.evaluation);
  const texts = [
    working.words,
    inSymbols(working),
    inNumbers(working, decimalComma),
    writeResult(working, decimalComma),
    ...working.inputs.map((input) => [input.label, writeInput(input, decimalComma)]),
  ];
  return saidOf(`working of ${id}`, texts);
}

function ofChoices(formulation: Formulation, { decimalComma }: Kitchen): readonly Said[] {
  const own = (['vessel', 'source', 'grains'] as const).flatMap((id) =>
    coefficientsOf(id, formulation).map(({ coefficient }) => [
      writeCoefficient(coefficient, decimalComma),
      describeCoefficient(coefficient, decimalComma),
    ]),
  );
  return saidOf('choices', [
    own,
    compositionOf(formulation),
    sugarFacts(formulation),
    allergensOf(formulation).sentence,
  ]);
}

function ofTime(document: SheetDocument, batch: Batch, formulation: Formulation): readonly Said[] {
  const { settings } = document;
  const points = ripeningAgainstRoom(formulation);
  const offers = readyIn(formulation, 24) ?? [];
  const looks = looksOf(document.log.filter((entry) => entry.batch === batch.id));
  const waiting = waitingOf(formulation, looks, batch.opened ?? null, hoursOf(0));
  return saidOf('time', [
    describeReady(formulation, settings),
    points === null
      ? []
      : [
          drawRipening(points, formulation, settings.decimalComma),
          ripeningLines(points, settings),
          describeChart(points, settings),
        ],
    offers,
    offers.map((offer) => {
      const way = wayToBeReady(offer, formulation, settings);
      return way === null ? [] : [way.label, way.text, way.after.rows.readyTime.value];
    }),
    [describeWaiting(waiting, settings.decimalComma), waiting.cautions, waiting.verdict],
    expectedHours(document, batch, 21),
  ]);
}

function ofBottle(document: SheetDocument, batch: Batch, formulation: Formulation): readonly Said[] {
  const { settings } = document;
  const fizz = fizzOf(formulation);
  const tight = tightLidOf(formulation);
  const plan = planFor(batch, formulation, settings);
  const fates = [fateOfFirst(formulation), fateAfterBottle(formulation)].filter((fate) => fate !== null);
  return saidOf('bottle', [
    fizz === null
      ? []
      : [
          [
            writeLikely(fizz, settings),
            describeBound(fizz, settings),
            nameLine(fizz, settings),
            writeVerdict(fizz),
            explainVerdict(fizz, settings),
            explainFizz(fizz, settings),
            describeFizz(fizz, settings),
          ],
          adviseFizz(formulation, settings),
          fizz.warming.map((step) => [
            writePlace(step, settings),
            writePressure(step.forgotten.pressure, settings),
            writeVolumes(step.forgotten.volumes, settings),
          ]),
          fizz.standing.map((one) => [
            writeStanding(one, settings),
            writeRange(one, settings),
            writePressure(one.likely.pressure, settings),
          ]),
          drawFizz(
            fizz.standing.map(({ likely, most }) => ({ likely: likely.pressure, most })),
            fizz.line,
            'bar',
          ),
        ],
    plan === null ? [] : describePlanned(formulation, secondHoursOf(plan.schedule), settings),
    tight === null ? [] : describeTightLid(tight, settings),
    readAddition(formulation, { id: 'honey', amount: '5 g', labelSugar: '' }, settings),
    describeNoSecond(formulation, settings),
    fates.map((fate) => [fateLines(fate, settings), describeSweetness(fate), describeAlcohol(fate, settings)]),
  ]);
}

function ofMaking(batch: Batch, formulation: Formulation, settings: SheetDocument['settings']): readonly Said[] {
  const plan = planFor(batch, formulation, settings);
  const days = { made: null, tasteBy: null, useBy: null };
  return saidOf('making', [
    stepsOf(formulation, stepAmounts(formulation, settings), settings).map(({ title, text, perJar, notes }) => [
      ...[title, text, perJar ?? ''],
      notes.map((note) => note.text),
    ]),
    cautionsAbout(cautionTopics, formulation).map(({ text }) => text),
    labelOfBatch(formulation, { name: batch.name, days, leads: settings.leads }),
    labelDaysOf(formulation),
    worstError(formulation, settings),
    drawJar(formulation),
    describeJar(formulation, settings),
    flowsOf(formulation),
    plannedDay(plan),
    plan?.schedule.steps,
    plan?.schedule.waits,
    writeRecipe(formulation, 'name', 'grams', settings),
    writeRecipe(formulation, 'name', 'scoops', settings),
    writeMarkupSnippet(recipeMarkup(formulation, 'name', settings)),
  ]);
}

function ofMoney(document: SheetDocument, batch: Batch, formulation: Formulation): readonly Said[] {
  const { settings, packages = [] } = document;
  const currency = currencyOf(settings.currency);
  const cost = batchCost(formulation, packages, batch.carton);
  const list = shoppingList([toShopFor(batch.name, formulation, batch.carton)], packages, { lessInHouse: true });
  const shopping = tellShopping(list, currency, settings);
  const { batch: whole, litre, glass, lines } = tellCost(cost, currency, settings);
  return saidOf('money', [
    ...[whole, litre, glass, describeMissing(cost), writeShoppingText(shopping), writeShoppingCsv(list, currency)],
    lines.map(({ amount, cost: written }) => [amount, written]),
    [...shopping.lines, ...shopping.inHouse],
    packages.map((entry) => {
      const food = foodOfKey(entry.food, entry.name);
      const priced = priceOf(food, packages);
      return 'why' in priced ? priced.why : tellUnitPrice(food, priced, currency, settings);
    }),
    compareSources(formulation, packages, batch.carton).map(({ name, grams, perLitre }) => [
      ...[name, grams, writeMoney(inCoins(perLitre, currency), currency, settings.decimalComma)],
    ]),
  ]);
}

function ofGlass(formulation: Formulation, settings: SheetDocument['settings']): readonly Said[] {
  const kefir = inKefir(formulation);
  const pulp = pulpOf(formulation);
  return saidOf('glass', [
    kefir === null ? [] : [glassLines(kefir, 250, settings), glassWorking(formulation, kefir, 250, settings)],
    kefir === null ? [] : [tellAlcohol(kefir, settings), tellKilojoules(kefir.all.energy, settings)],
    pulp === null ? [] : [describePulp(pulp, settings), describeShare(pulp, formulation, settings)],
    pulp === null ? [] : [besideMeasured(formulation, pulp, settings), describePulpAllergens(formulation)],
    [usesOfPulp(formulation), describeKeeping(settings), keepingOrigin(settings)],
  ]);
}

function ofOthers(document: SheetDocument, batch: Batch, formulation: Formulation): readonly Said[] {
  const { settings } = document;
  const [other] = document.batches;
  const base = other === undefined ? formulation : formulate(recipeOf(document, other));
  const scaled = scaleTo(formulation, 'litre');
  return saidOf('others', [
    largestBatch(formulation, batch.onHand ?? {}),
    stockIds.flatMap((stock) => {
      const problem = stockProblem(stock, formulation);
      return [makeFrom(stock, formulation), problem === null ? [] : describeProblem(problem, settings)];
    }),
    rowOrder.map((id) => compareRow(id, formulation, base, settings)),
    swapsFor(formulation, sweetenerCosts(document.packages ?? [])),
    rowOrder.filter(isRow).map((id) => writeRow(scaled, id, settings)),
    plainFragment(document, batch).length,
  ]);
}
