/**
 * What the frames of all functions share, as names of a workbook. Each is found by its name in the formulas that call it,
 * so that a file gets only those it needs. ROWS, COLUMNS, AND and OR are avoided: some programs know the first two of
 * references alone, and the others take an array as one.
 */

/** A helper: its formula by its name. */
export type Helpers = Readonly<Record<string, string>>;

export const helpers: Helpers = {
  // An error that is no range is one cell.
  _TEA_ROWS: "LAMBDA(given,IFERROR(SUM(BYROW(given,LAMBDA(line,1))),1))",
  _TEA_COLUMNS: "LAMBDA(given,IFERROR(SUM(BYCOL(given,LAMBDA(line,1))),1))",
  _TEA_SIZE: "LAMBDA(given,_TEA_ROWS(given)*_TEA_COLUMNS(given))",
  // A blank cell must not turn into 0 on the way.
  _TEA_CELLS:
    'LAMBDA(given,IF(_TEA_SIZE(given)=1,VSTACK(IF(ISBLANK(given),"",given)),MAP(given,LAMBDA(held,IF(ISBLANK(held),"",held)))))',
  // 1 where a range neither has the size of the answer nor is repeated along it.
  _TEA_MISFIT:
    "LAMBDA(given,high,wide,LET(down,_TEA_ROWS(given),along,_TEA_COLUMNS(given),IF((down>1)*(down<high)+(along>1)*(along<wide)>0,1,0)))",
  _TEA_SPREAD:
    "LAMBDA(given,high,wide,LET(all,VSTACK(given),down,_TEA_ROWS(all),along,_TEA_COLUMNS(all),IF((down=high)*(along=wide),all,MAKEARRAY(high,wide,LAMBDA(place,across,INDEX(all,IF(down=1,1,place),IF(along=1,1,across)))))))",
  _TEA_NUMBER:
    'LAMBDA(held,inside,zeroIsBlank,IF(ISERROR(held),held,IF(ISNUMBER(held),IF(inside,held,IF((held=0)*zeroIsBlank,"",#VALUE!)),IF(ISTEXT(held),IF(held="","",#VALUE!),#VALUE!))))',
  _TEA_YESNO:
    'LAMBDA(held,IF(ISERROR(held),held,IF(ISLOGICAL(held),held,IF(ISNUMBER(held),IF(held=1,TRUE,IF(held=0,FALSE,#VALUE!)),IF(held="","",#VALUE!)))))',
  _TEA_WORD:
    'LAMBDA(held,spellings,words,IF(ISERROR(held),held,IF(ISTEXT(held),IF(held="","",IFERROR(INDEX(words,1,XMATCH(TRIM(held),spellings)),#VALUE!)),IF(ISNUMBER(held),IF(held=0,"",#VALUE!),#VALUE!))))',
  _TEA_TEXT: 'LAMBDA(held,IF(ISERROR(held),held,IF(ISLOGICAL(held),IF(held,"TRUE","FALSE"),held&"")))',
  // The place of the last item of a list that is filled.
  _TEA_FILLED:
    'LAMBDA(list,MAX(MAP(list,SEQUENCE(_TEA_ROWS(list)),LAMBDA(held,place,IF(ISERROR(held),place,IF(held="",0,place))))))',
  // A list as so many rows, with blanks behind its end.
  _TEA_ROWED:
    'LAMBDA(list,high,LET(long,_TEA_ROWS(list),MAKEARRAY(MAX(1,high),1,LAMBDA(place,across,IF(place>long,"",INDEX(list,place,1))))))',
  _TEA_REFUSED: "LAMBDA(list,SUM(MAP(list,LAMBDA(held,IF(ISERROR(held),1,0)))))",
  _TEA_BLANKS: 'LAMBDA(list,SUM(MAP(list,LAMBDA(held,IF(ISERROR(held),0,IF(held="",1,0))))))',
  _TEA_GIVEN: 'LAMBDA(held,IF(ISERROR(held),1,IF(held="",0,1)))',
  _TEA_ABOVE0: "LAMBDA(held,IF(ISNUMBER(held),IF(held>0,1,0),0))",
  _TEA_INSTEAD: 'LAMBDA(held,usual,IF(ISERROR(held),held,IF(held="",usual,held)))',
};
