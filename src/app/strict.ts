import { config } from 'zod';

// The page allows no code made from text; without this zod tries it when a schema is made, and the
// browser complains.
config({ jitless: true });
