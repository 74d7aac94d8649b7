/** Words that stand in most English sentences and in no German one. */
const ENGLISH =
  /\b(the|is|are|it|of|and|or|to|from|with|when|while|not|no|its|this|that|there|than|by|at|on|be|has|have|down|up|over|more|each|take|give|check|hours|values|rows|columns)\b/gi;

/** English words left in a text that should be German. */
export function englishIn(text: string): string[] {
  return text.match(ENGLISH) ?? [];
}
