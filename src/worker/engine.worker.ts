import { expose } from 'comlink';
import { EngineHost } from './host.ts';

expose(new EngineHost());
