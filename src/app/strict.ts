import { config } from 'zod';

// The page allows no code made from text; without this zod tries it when a schema is made, and the
// browser complains. Imported before everything that makes schemas.
config({ jitless: true });
