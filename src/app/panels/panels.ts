import type { Component } from 'svelte';
import type { Run } from '../state/engine.svelte.ts';
import OpeningsPanel from './OpeningsPanel.svelte';
import YearPanel from './YearPanel.svelte';

/** One bench of the workbench: a part of the page with its own name and address. */
export interface Bench {
  /** Part of the address after `#`. */
  id: string;
  label: string;
  panel: Component<{ run: Run }>;
}

/** The benches in the order of the work. */
export const benches: readonly Bench[] = [
  { id: 'openings', label: 'Openings', panel: OpeningsPanel },
  { id: 'year', label: 'Year', panel: YearPanel },
];
