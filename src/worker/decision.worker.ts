import { expose } from 'comlink';
import { DecisionHost } from './decisionHost.ts';

expose(new DecisionHost());
