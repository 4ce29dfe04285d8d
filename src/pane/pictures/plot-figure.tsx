import { type PlotOptions, plot } from "@observablehq/plot";
import { type ReactNode, useEffect, useId, useRef, useState } from "react";
import { useMessages } from "../use-messages";

interface PlotFigureProps {
  readonly title: string;
  /** What the picture shows, for whoever does not see it. */
  readonly alternative: string;
  /** What is drawn at a width. `hatch` is the fill of the second of two parts, told apart without its colour. */
  readonly drawn: (width: number, hatch: string) => PlotOptions;
  readonly legend?: ReactNode;
  readonly headings: readonly string[];
  /** The same numbers, as they are shown. */
  readonly rows: readonly (readonly string[])[];
}

/** A picture with its text alternative, and the same numbers as a table. */
export function PlotFigure({ title, alternative, drawn, legend, headings, rows }: PlotFigureProps) {
  const { picture } = useMessages();
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place);
  const hatch = `hatch${useId().replaceAll(/[^\w-]/g, "")}`;

  useEffect(() => {
    if (place.current === null || width === 0) return;
    place.current.replaceChildren(drawing(drawn(width, `url(#${hatch})`), width, hatch));
  }, [drawn, width, hatch]);

  return (
    <figure className="picture">
      <figcaption>{title}</figcaption>
      <div ref={place} role="img" aria-label={alternative} className="drawing" />
      {legend}
      <details>
        <summary>{picture.table}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the pane is scrolled with the arrow keys */}
        <section className="answer" aria-label={title} tabIndex={0}>
          <table>
            <thead>
              <tr>
                {headings.map((heading) => (
                  <th key={heading} scope="col">
                    {heading}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((row, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two stages may have one name
                <tr key={index}>
                  {row.map((cell, column) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: a column is known by its place
                    <td key={column} className={column === 0 ? undefined : "number"}>
                      {cell}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </figure>
  );
}

/** The width that the picture has, as it changes. */
function useWidth(place: React.RefObject<HTMLElement>): number {
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => setWidth(Math.floor(element.clientWidth)));
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
  return width;
}

function drawing(options: PlotOptions, width: number, hatch: string): Element {
  const svg = plot({ ...options, width, marks: [() => hatchPattern(hatch), ...(options.marks ?? [])] });
  // A style element is what the page's policy forbids; its few rules stand in pictures.css. Nothing has been blocked
  // yet, for the drawing is not in the page.
  for (const style of svg.querySelectorAll("style")) style.remove();
  svg.setAttribute("aria-hidden", "true");
  return svg;
}

/** Slanted lines, so that the parts of a bar differ by more than their colour. */
function hatchPattern(id: string): SVGElement {
  const pattern = svgElement("pattern", { id, width: "6", height: "6", patternUnits: "userSpaceOnUse" });
  pattern.append(
    svgElement("rect", { width: "6", height: "6", fill: "var(--picture-second)" }),
    svgElement("path", { d: "M-1,1 l2,-2 M0,6 l6,-6 M5,7 l2,-2", stroke: "var(--picture-line)", "stroke-width": "1" }),
  );
  const definitions = svgElement("defs", {});
  definitions.append(pattern);
  return definitions;
}

function svgElement(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, value);
  return element;
}
