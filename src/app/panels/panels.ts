import type { Component } from 'svelte';
import type shell from '../../../data/words/en/shell.json';
import type { Namespace } from '../../words/index.ts';
import type { Run } from '../state/engine.svelte.ts';

/** One bench of the workbench: a part of the page with its own name and address. */
export interface Bench {
  /** Part of the address after `#`, and its name in the language files. */
  id: Exclude<keyof (typeof shell)['benches'], 'label' | 'failed'>;
  /** It shows the facade ring itself; the others have it beside them. */
  ownRing?: boolean;
  /** It needs the whole page: neither the ring nor the facade table stands beside it. */
  alone?: boolean;
  /** The parts of the language files it needs beside the common one. */
  words?: readonly Namespace[];
  /** Loads its panel when it is first shown, so that the page opens quickly. */
  load: () => Promise<{ default: Component<{ run: Run }> }>;
}

/** The benches in the order of the work. */
export const benches: readonly Bench[] = [
  { id: 'site', words: ['site'], load: () => import('./SitePanel.svelte') },
  {
    id: 'openings',
    ownRing: true,
    words: ['openings', 'library'],
    load: () => import('./OpeningsPanel.svelte'),
  },
  {
    id: 'schedules',
    words: ['schedules', 'rules', 'library'],
    load: () => import('./SchedulePanel.svelte'),
  },
  {
    id: 'room',
    words: ['rooms', 'library'],
    load: () => import('./RoomPanel.svelte'),
  },
  {
    id: 'decide',
    words: ['decide', 'rules', 'library'],
    load: () => import('./DecidePanel.svelte'),
  },
  { id: 'year', words: ['year'], load: () => import('./YearPanel.svelte') },
  {
    id: 'client',
    alone: true,
    words: ['client', 'rules', 'library'],
    load: () => import('./ClientPanel.svelte'),
  },
];

/** The bench the app opens on. */
export const FIRST_BENCH = 'openings';
