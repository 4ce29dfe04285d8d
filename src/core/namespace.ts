/** The namespace of the worksheet names, TEA.OUTTURN: it stands here and nowhere else. */
export const namespace = "TEA";
