import type { Page } from "playwright-core";
import { beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { places, typeNumbers } from "./typing/trials";
import { workbookVisits } from "./workbook-visits";

const found = await findBrowser();

describe.skipIf(!found)("typing on the workbook page", () => {
  const visits = workbookVisits(found);
  let page: Page;
  let address: string;

  beforeEach(async () => {
    const visit = await visits.begin();
    ({ page, address } = visit);
    return visit.end;
  });

  // Where calculations write the cells that are typed into next; `npm run type-test` types more, and elsewhere too.
  test.each(places.slice(0, 2))("forty numbers typed at 60 ms a key into $name stand as typed", async (place) => {
    await place.open(page, address);
    expect(await typeNumbers(page, place, 40, 60)).toEqual([]);
  });
});
