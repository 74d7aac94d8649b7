import { HOURS } from '../../../lib/time/index.ts';

/** Hour quantities a sheet or strip can show. */
export type SheetQuantity =
  | 'without'
  | 'with'
  | 'stopped'
  | 'lowered'
  | 'sunlit'
  | 'incident'
  | 'outdoor'
  | 'roomWithout'
  | 'roomWith'
  | 'overWithout'
  | 'overWith';

/** What the user is looking at: one opening, one hour of the year, one quantity. */
export class Selection {
  /** Id of the chosen opening; empty: the whole house. */
  opening = $state('');
  /** Id of the room that was chosen; empty until one is. */
  room = $state('');
  /** Hour of the typical year, 0 to 8,759. */
  hour = $state(4621);
  quantity = $state<SheetQuantity>('with');

  get day(): number {
    return Math.floor(this.hour / 24);
  }

  /** Moves by hours round the year. */
  moveHour(by: number): void {
    this.hour = (this.hour + by + HOURS) % HOURS;
  }
}
