import { say } from './say.ts';

/** What must stand beside any advice on heat in rooms. Whole sentences for the page. */
export const roomCautions = /* @__PURE__ */ cautions();

function cautions() {
  return {
    heat: say('room.caution.heat'),
    escape: say('room.caution.escape'),
    airing: say('room.caution.airing'),
    heights: say('room.caution.heights'),
    glass: say('room.caution.glass'),
    model: say('room.caution.model'),
    decides: say('room.caution.decides'),
  };
}
