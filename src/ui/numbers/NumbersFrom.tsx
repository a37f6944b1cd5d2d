import { useMemo, useState } from 'preact/hooks';
import { writeSignificant } from '../../formula/words/write-significant';
import { everyFigure, type FigureGroup, findFigures, type ListedFigure } from '../../formula/working/every-figure';
import './numbers.css';

interface Props {
  readonly decimalComma: boolean;
}

// As many digits as any table has.
const digits = 12;

/** Every figure that the sheet works with, with its unit, its range and where it is from. */
export function NumbersFrom({ decimalComma }: Props) {
  const groups = useMemo(() => everyFigure(), []);
  const [wanted, setWanted] = useState('');
  const found = findFigures(groups, wanted);
  return (
    <div class="numbers-from">
      <p>
        Published figures name the work, its place in it and what was seen of it; the rest say that they are common
        practice, from memory, or a judgement of this sheet.{' '}
        <a href="coefficients.csv" download>
          The same as one table
        </a>
        , for a spreadsheet.
      </p>
      <label>
        Find a figure
        <input
          type="search"
          value={wanted}
          autocomplete="off"
          onInput={(event) => setWanted(event.currentTarget.value)}
        />
      </label>
      {found.length === 0 && <p role="status">No figure has all of these words.</p>}
      {found.map((group) => (
        <Group key={group.id} group={group} isFound={wanted.trim() !== ''} decimalComma={decimalComma} />
      ))}
    </div>
  );
}

interface GroupProps extends Props {
  readonly group: FigureGroup;
  readonly isFound: boolean;
}

/** A group opens by itself where something was looked for, and draws its many lines only then. */
function Group({ group, isFound, decimalComma }: GroupProps) {
  const [opened, setOpened] = useState(false);
  const open = isFound || opened;
  return (
    <details open={open} onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>
        {group.title} <small>({group.figures.length})</small>
      </summary>
      {open && (
        <div class="numbers-table">
          <table>
            <caption class="unseen">{group.title}</caption>
            <thead>
              <tr>
                <th scope="col">Figure</th>
                <th scope="col">Value</th>
                <th scope="col">Range</th>
                <th scope="col">Where from</th>
              </tr>
            </thead>
            <tbody>
              {group.figures.map((figure) => (
                <Line key={`${figure.of} ${figure.label}`} figure={figure} decimalComma={decimalComma} />
              ))}
            </tbody>
          </table>
        </div>
      )}
    </details>
  );
}

function Line({ figure, decimalComma }: { figure: ListedFigure } & Props) {
  const { of, label, value, unit, low, high, from } = figure;
  const write = (number: number) => writeSignificant(number, decimalComma, digits);
  return (
    <tr>
      <th scope="row">
        {of !== '' && <b>{of}: </b>}
        {label}
      </th>
      <td>
        {write(value)}
        {'\u00A0'}
        {unit}
      </td>
      <td>{low !== undefined && high !== undefined && `${write(low)} to ${write(high)}`}</td>
      <td>{from}</td>
    </tr>
  );
}
