/** Says that the still on the bench is somebody else's, and lets the reader keep it or go back to their own. */
import type { Visit } from '../state/kept-still.ts';
import type { Shelf } from '../state/shelf.ts';
import type { Told } from './told.ts';

export interface VisitStripProps {
  readonly visit: Visit;
  /** Fetches the shelf. */
  readonly shelf: () => Promise<Shelf>;
  readonly tell: (told: Told | null) => void;
}

const came = ({ from, isOwn }: Visit): string =>
  `This still came from a ${from}.${isOwn ? ' Yours is as you left it.' : ''}`;

export function VisitStrip(props: VisitStripProps) {
  /** What was pressed goes away. */
  const toMain = () => document.getElementById('main')?.focus({ preventScroll: true });
  const keep = async () => {
    (await props.shelf()).keepVisitor();
    toMain();
  };
  const goHome = async () => {
    const problem = await (await props.shelf()).goHome();
    props.tell(problem ? { message: `Your still was not opened. ${problem}` } : null);
    toMain();
  };
  return (
    <div class="notice">
      <p role="status">{came(props.visit)}</p>
      <button type="button" onClick={() => void keep()}>
        Keep as mine
      </button>
      <button type="button" onClick={() => void goHome()}>
        {props.visit.isOwn ? 'Back to my still' : 'Back to the one before'}
      </button>
    </div>
  );
}
