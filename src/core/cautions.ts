/**
 * The usual cautions where work can hurt someone. Information for the reader, never a ruling: local codes and
 * licensed practice come first, and no function says that a lot is safe or fit for sale.
 */
export interface Caution {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

export const hotPan: Caution = {
  id: "hot-pan",
  title: "Hot pans and steam",
  text: "A firing pan works at 200 °C and more; bare metal, hot edges and steam burn at a touch. Wear gloves, keep loose sleeves away, set the pan on a firm stand, have water and a burn kit within reach, and keep children out of the room.",
};

export const carbonMonoxide: Caution = {
  id: "carbon-monoxide",
  title: "Charcoal, wood and carbon monoxide",
  text: "Burning charcoal and wood give off carbon monoxide, which cannot be seen or smelled. Never fire indoors without an open flue and a working carbon monoxide alarm. Workplace limits are set by law; ask the authority where you work.",
};

export const dust: Caution = {
  id: "dust",
  title: "Tea dust and charcoal dust",
  text: "Dry tea dust and charcoal dust can catch fire, and explode when they hang in the air. No flame and no sparks where dry tea is sifted, and never leave a lit pan or dryer alone.",
};

export const warmLeaf: Caution = {
  id: "warm-leaf",
  title: "Warm, moist leaf",
  text: "Leaf wrapped warm and moist stays for hours in the range of temperatures that food-safety rules watch. Use clean wraps, turn on the clock, set an end time, and discard leaf that smells musty. A calculation from weights cannot tell whether a lot is safe.",
};

export const paidWeight: Caution = {
  id: "paid-weight",
  title: "Weights that decide a payment",
  text: "Where a weight decides what someone is paid, local law usually asks for a verified scale. Use one, and keep to what that law says.",
};

export const saleLimit: Caution = {
  id: "sale-limit",
  title: "Limits for sale",
  text: "Limits for moisture, dust or residues come from the standard in force where the tea is sold. Type the limit that applies to you; none is supplied here, and no answer here says that a lot is fit for sale.",
};

/** All of them, in the order of the working day. */
export const cautions: readonly Caution[] = [hotPan, carbonMonoxide, warmLeaf, dust, paidWeight, saleLimit];

/** Stands under every list of cautions. */
export const deferral =
  "These are the usual cautions, not a complete list. Local codes, the makers of your equipment and licensed practice come first.";
