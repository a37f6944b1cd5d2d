import type { CultureId } from './grains';
import { commonPractice, fromMemory, judgement, type Origin } from './origins';

export interface GrainNote {
  readonly text: string;
  readonly origin: Origin;
  /** Whether it is of something that can hurt: it stands where the culture goes in. */
  readonly caution?: boolean;
}

const chlorine: GrainNote = {
  text: 'Chlorine in tap water slows them. Let the water stand open overnight or boil and cool it; some waterworks add what does not leave that way, so filter it or buy water where they do.',
  origin: fromMemory(),
};

/** What is to be said of each culture that no figure says: how it is kept, and what it carries into the drink. */
export const grainNotes: Readonly<Record<CultureId, readonly GrainNote[]>> = {
  water: [
    {
      text: 'They live on added sugar. Expect little growth in plant milk, and rest them in sugar water between batches.',
      origin: commonPractice(),
    },
    chlorine,
  ],
  milk: [
    {
      text: 'They carry milk protein, even after rinsing. Tell anyone with a milk allergy.',
      origin: commonPractice(),
      caution: true,
    },
    {
      text: 'They hold up better when every few batches are made in dairy milk.',
      origin: commonPractice(),
    },
    chlorine,
  ],
  powder: [
    {
      text: 'It may hold milk: most powders have milk sugar or milk powder with them. Read the packet, and tell anyone with a milk allergy.',
      origin: commonPractice(),
      caution: true,
    },
    {
      text: 'A whole packet in less milk than it is meant for does no harm. One that is old or was kept warm may be dead: mind its date, and keep it cold.',
      origin: commonPractice(),
    },
  ],
  kefir: [
    {
      text: 'It brings along whatever it was made of and with: its nut, and milk protein where milk grains, powder or dairy milk were in it. Tell your guests of those too.',
      origin: commonPractice(),
      caution: true,
    },
    {
      text: 'Take it from a batch that turned sour, smells clean and is at most a week old. Begin again from grains or a fresh packet after about five batches: from one to the next the balance of its yeasts and bacteria is lost.',
      origin: judgement(
        'Published: kefir made from kefir can’t go on so to an acceptable product. That five will do, and the week, is our own guess.',
      ),
    },
  ],
};
