import { afterEnd, beforeStart, carried, stageBalance } from "../../core/balance/stage-balance";
import { Phrase } from "../../core/phrases";
import { arithmetic } from "../arithmetic";
import { literal, said } from "../words";

/** What stands before the number that dry matter grows by. */
const growsBy = literal(new Phrase({ kind: "grows", by: 1 }).toString().slice(0, -1));

const at = (list: string): string => `INDEX(${list},place,1)`;

/** A value for each row whose moisture was measured, after the first such row; `last` is the one before it. */
const closing = (value: string): string =>
  `MAP(places,lasts,moistures,LAMBDA(place,last,moisture,IF((last=0)+(moisture="")>0,"",${value})))`;

const waterOff = closing(
  `_TEA_SPECKLESS(INDEX(weights,last,1)*INDEX(moistures,last,1)-${at("weights")}*moisture-taken(waterParts,last,place),INDEX(weights,last,1))`,
);
const unaccounted = closing(
  `_TEA_SPECKLESS(INDEX(dry,last,1)-${at("dry")}-taken(dryParts,last,place),INDEX(dry,last,1))`,
);

const note = `IF((place>first)*(place<end),${said(carried)},IF(place<first,${said(beforeStart)},${said(afterEnd)}))`;
const unread = `IF(across=9,${note},IF((across=10)*(place>first)*(place<end),${at("leaf")},""))`;
const growth = `IF(_TEA_GROWS(${at("unaccounted")},start),${growsBy}&_TEA_SHOWN(-${at("unaccounted")}),"")`;
const read = `CHOOSE(across-2,moisture,${at("dry")},${at("waterOff")},${at("dryRemoved")},${at("unaccounted")},${at("dry")}/start,${growth},${at("leaf")})`;
const rows = `MAKEARRAY(_TEA_ROWS(weights),10,LAMBDA(place,across,LET(moisture,${at("moistures")},IF(across=1,${at("stages")},IF(across=2,${at("weights")},IF(moisture="",${unread},IF(place=first,CHOOSE(across-2,moisture,start,"","","",1,"",""),${read})))))))`;
const total = `HSTACK(${said("total")},"","","",_TEA_SPECKLESS(SUM(waterOff),start),_TEA_SPECKLESS(SUM(dryRemoved),start),_TEA_SPECKLESS(SUM(unaccounted),start),INDEX(dry,end,1)/start,"",taken(leaf,first,end))`;

const balance = `LET(dry,MAP(weights,moistures,LAMBDA(weight,moisture,IF(moisture="",0,_TEA_DRYMATTER(weight,moisture)))),start,INDEX(dry,first,1),lasts,MAP(places,LAMBDA(place,MAX(MAP(places,moistures,LAMBDA(seat,moisture,IF((seat<place)*(moisture<>""),seat,0)))))),dryParts,MAP(leaf,leafMoistures,LAMBDA(weight,moisture,weight*(1-moisture))),waterParts,MAP(leaf,leafMoistures,LAMBDA(weight,moisture,weight*moisture)),taken,LAMBDA(part,last,place,SUM(MAP(places,part,LAMBDA(seat,weight,IF((seat>last)*(seat<=place),weight,0))))),waterOff,${waterOff},dryRemoved,${closing("taken(dryParts,last,place)")},unaccounted,${unaccounted},VSTACK(${rows},${total}))`;

const leafMoisture = 'IF(taken=0,0,IF(own<>"",own,IF(moisture="",#VALUE!,moisture)))';

export const stageBalanceArithmetic = arithmetic(
  stageBalance,
  `IF(IF(INDEX(removed,1,1)="",0,INDEX(removed,1,1))<>0,#VALUE!,LET(places,SEQUENCE(_TEA_ROWS(weights)),end,MAX(MAP(places,moistures,LAMBDA(place,moisture,IF(moisture="",0,place)))),IF(end=0,"",LET(first,MIN(MAP(places,moistures,LAMBDA(place,moisture,IF(moisture="",end,place)))),leaf,MAP(removed,LAMBDA(taken,IF(taken="",0,taken))),leafMoistures,MAP(leaf,removedMoistures,moistures,LAMBDA(taken,own,moisture,${leafMoisture})),early,SUM(MAP(places,leaf,LAMBDA(place,taken,IF((place<=first)*(taken<>0),1,0)))),IF(early+_TEA_REFUSED(leafMoistures)>0,#VALUE!,${balance})))))`,
);
