/** The pane's styles. A page that fetches the pane later has them from the start: what comes later brings none. */
import "./fluent-tokens.css";
import "./pane.css";
import "./pieces.css";
import "./pictures/pictures.css";
