/** The jobs in the order of the maker's day. Every number to start with is invented, for an invented lot. */
import { balanceFit } from "../core/balance/balance-fit";
import { stageBalance } from "../core/balance/stage-balance";
import { dust, paidWeight } from "../core/cautions";
import { chargeCount } from "../core/charges/charge-count";
import { chargePlan } from "../core/charges/charge-plan";
import { moistureNow } from "../core/moisture/moisture-now";
import { seasonTable } from "../core/season/season-table";
import { dryingSteps } from "../core/targets/drying-steps";
import { firingTarget } from "../core/targets/firing-target";
import { lossMeanings } from "../core/targets/loss-meanings";
import { turnTimes } from "../core/time/turn-times";
import { finishedBand } from "../core/yields/finished-band";
import { finishedCheck } from "../core/yields/finished-check";
import type { Job } from "./job";

const planTheCharges: Job = {
  id: "charges",
  functions: [chargeCount, chargePlan],
  inputs: { weight: "936", moisture: "74.5 %", panLoad: "240" },
  more: ["maxLoad", "readability"],
  lists: [{ targets: ["28 %", "48 %"], targetKinds: ["water", "moisture"] }],
  spareRows: 4,
};

const readTheScale: Job = {
  id: "scale",
  functions: [firingTarget, lossMeanings],
  inputs: { weight: "240", moisture: "74.5 %", loss: "28 %", lossOf: "water" },
};

const moistNow: Job = {
  id: "moisture",
  functions: [moistureNow],
  inputs: { startWeight: "640", startMoisture: "74 %", weightNow: "402", dryLoss: "" },
};

const routeToTea: Job = {
  id: "route",
  functions: [dryingSteps],
  inputs: { weight: "936", moisture: "74.5 %" },
  lists: [
    {
      names: "steps",
      targets: ["28 %", "48 %", "34 %", "6 %"],
      targetKinds: ["water", "moisture", "moisture", "moisture"],
    },
  ],
};

const finishedAddsUp: Job = {
  id: "finished",
  functions: [finishedCheck, finishedBand],
  inputs: {
    freshWeight: "1180",
    freshMoisture: "75 %",
    finishedMoisture: "6 %",
    finishedWeight: "291",
    highLoss: "12 %",
  },
  more: ["removed", "removedMoisture", "lowLoss", "weightError", "freshMoistureError", "finishedMoistureError"],
  cautions: [paidWeight],
};

const turning: Job = {
  id: "turns",
  functions: [turnTimes],
  inputs: { start: "13:40", duration: "3:20", interval: "0:25" },
  spareRows: 12,
};

const season: Job = {
  id: "season",
  functions: [seasonTable],
  inputs: {},
  lists: [
    {
      groups: "plots",
      freshWeights: ["1320", "960", "1105", "1240"],
      finishedWeights: ["306", "217", "262", ""],
    },
    { areaNames: ["", ""], areas: ["", ""] },
  ],
  spareRows: 6,
};

const balance: Job = {
  id: "balance",
  functions: [stageBalance],
  inputs: {},
  lists: [
    {
      stages: "stages",
      weights: ["980", "845", "452", "242"],
      moistures: ["75.2 %", "71.3 %", "49 %", "5.8 %"],
      removed: ["", "", "18", ""],
    },
  ],
  cautions: [dust],
};

const fit: Job = {
  id: "fit",
  functions: [balanceFit],
  inputs: { weightErrors: "0.5", moistureErrors: "1" },
  more: ["dryLosses", "confidence"],
  lists: balance.lists ?? [],
};

export const jobs: readonly Job[] = [
  planTheCharges,
  readTheScale,
  moistNow,
  routeToTea,
  finishedAddsUp,
  turning,
  season,
  balance,
  fit,
];
