import type { StepFigure } from '../../formula/steps/step-figures';
import { describeCoefficient } from '../../formula/words/origin-words';
import { writeCoefficient } from '../../formula/working/working-text';

interface Props {
  readonly figures: readonly StepFigure[];
  readonly decimalComma: boolean;
}

/** The figures a step rests on that have no row of their own, each with where it is from. */
export function StepFigures({ figures, decimalComma }: Props) {
  if (figures.length === 0) return null;
  return (
    <details class="step-figures">
      <summary>Times and warmth of this step</summary>
      <ul class="inputs">
        {figures.map(({ label, coefficient }) => (
          <li key={label}>
            {label}: <span class="amount">{writeCoefficient(coefficient, decimalComma)}</span>
            <span class="origin">{describeCoefficient(coefficient, decimalComma)}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
