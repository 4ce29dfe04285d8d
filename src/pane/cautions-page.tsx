import { cautions, deferral } from "../core/cautions";

/** Every caution of the catalogue, in the order of the working day. */
export function CautionsPage() {
  return (
    <>
      <h1>Cautions</h1>
      <p>{deferral}</p>
      {cautions.map(({ id, title, text }) => (
        <section key={id}>
          <h2>{title}</h2>
          <p>{text}</p>
        </section>
      ))}
    </>
  );
}
