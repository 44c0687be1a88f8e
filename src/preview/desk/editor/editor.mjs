// The editor of the desk: a text with the format's own colours, its faults at their places,
// and what may be written where. `build.sh` makes editor.js of it.
import { autocompletion, closeBrackets, closeBracketsKeymap, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyField, historyKeymap } from "@codemirror/commands";
import { HighlightStyle, StreamLanguage, syntaxHighlighting } from "@codemirror/language";
import { lintGutter, lintKeymap, setDiagnostics } from "@codemirror/lint";
import { MergeView } from "@codemirror/merge";
import { highlightSelectionMatches, searchKeymap } from "@codemirror/search";
import { EditorSelection, EditorState } from "@codemirror/state";
import { EditorView, drawSelection, highlightActiveLine, highlightActiveLineGutter, hoverTooltip, keymap, lineNumbers } from "@codemirror/view";
import { tags } from "@lezer/highlight";

// A measure as texts have it: a number, and a unit right behind it.
const NUMBER = /^(?:\d+(?:[.,]\d+)?|[½¼¾⅓⅔⅛])(?:\s*(?:[-–/]|to|x|×)\s*\d+(?:[.,]\d+)?)*(?:\s*(?:°[CF]|%|kg|mg|g|ml|l|cm|mm|min|h|lb|oz|tbsp|tsp|cups?)(?![\p{L}]))?/u;

/** The words of a line of the head, a ticket or a YAML file. */
function row(stream, state) {
  if (stream.sol() && stream.match(/^\s*(?:-\s*)?[\p{L}][\p{L}\p{N} _-]*(?=:)/u)) return "propertyName";
  return value(stream, state);
}

/** Everything else: comments, live values, measures, links. */
function value(stream) {
  if (stream.match(/^\s+/)) return null;
  if (stream.match(/^#.*/)) return "comment";
  if (stream.match(/^\\[{}]/)) return "escape";
  if (stream.match(/^\{[^}]*\}/)) return "special";
  if (stream.match(NUMBER)) return "number";
  if (stream.match(/^\[[^\]]*\]\([^)]*\)/)) return "link";
  stream.match(/^[\p{L}\p{N}]+/u) || stream.next();
  return null;
}

/** Prose, with its headings, cautions and tickets. */
function prose(stream, state) {
  if (stream.sol()) {
    if (stream.match(/^#{1,6}\s.*/)) return "heading";
    if (stream.match(/^(~{3,}|`{3,})\s*ticket\s*$/)) { state.in = "ticket"; return "meta"; }
    if (stream.match(/^>\s*[\p{L}]+:/u)) return "strong";
    if (stream.match(/^>\s?/)) return "quote";
  }
  if (stream.match(/^\*\*[^*]+\*\*|^__[^_]+__/)) return "strong";
  if (stream.match(/^[*_][^*_\s][^*_]*[*_]/)) return "emphasis";
  return stream.match(/^#/) ? null : value(stream, state);
}

const recipe = {
  name: "recipe",
  startState: () => ({ in: "start" }),
  token(stream, state) {
    if (stream.sol() && state.in !== "ticket" && stream.match(/^---\s*$/)) {
      state.in = state.in === "start" ? "head" : "prose";
      return "meta";
    }
    if (state.in === "start") state.in = "prose";
    if (state.in === "ticket" && stream.sol() && stream.match(/^(~{3,}|`{3,})\s*$/)) { state.in = "prose"; return "meta"; }
    return state.in === "prose" ? prose(stream, state) : row(stream, state);
  },
  languageData: { commentTokens: { line: "#" }, closeBrackets: { brackets: ["(", "{", "["] } },
};

const list = { ...recipe, name: "list", token: row };

const colours = HighlightStyle.define([
  { tag: tags.heading, class: "w-heading" },
  { tag: tags.propertyName, class: "w-key" },
  { tag: tags.number, class: "w-measure" },
  { tag: tags.macroName, class: "w-live" },
  { tag: tags.link, class: "w-link" },
  { tag: tags.comment, class: "w-comment" },
  { tag: tags.meta, class: "w-mark" },
  { tag: tags.strong, class: "w-strong" },
  { tag: tags.emphasis, class: "w-emphasis" },
  { tag: tags.quote, class: "w-quote" },
]);

const language = (path) => StreamLanguage.define({
  ...(path.endsWith(".md") ? recipe : list),
  tokenTable: { special: tags.macroName, escape: tags.escape },
});

/**
 * An editor in `parent`. `to` hears of it: `typed()` after each change, `moved(line)` when the
 * caret comes to another line, `offers(text, at)` what may be written, `explains(text, at)` what
 * a word is. `phrases` are the component's own words in the language of the course.
 */
function create(parent, to, phrases) {
  let quiet = false;
  let line = 0;
  const heard = EditorView.updateListener.of((update) => {
    if (update.docChanged && !quiet) to.typed();
    const now = update.state.doc.lineAt(update.state.selection.main.head).number;
    if ((update.selectionSet || update.docChanged) && now !== line) {
      line = now;
      if (!quiet) to.moved(now);
    }
  });
  const offers = async (context) => {
    if (!context.explicit && !context.matchBefore(/[\p{L}\p{N}{]+/u)) return null;
    const found = await to.offers(context.state.doc.toString(), context.pos);
    if (!found || context.aborted || !found.options.length) return null;
    return { from: found.from, options: found.options, filter: true };
  };
  const explains = async (view, at) => {
    const found = await to.explains(view.state.doc.toString(), at);
    if (!found) return null;
    const dom = document.createElement("div");
    dom.className = "explained";
    dom.append(...found.lines.map((text) => {
      const part = document.createElement("p");
      part.textContent = text;
      return part;
    }));
    return { pos: found.from, end: found.to, above: true, create: () => ({ dom }) };
  };
  const parts = (path) => [
    lineNumbers(), highlightActiveLineGutter(), highlightActiveLine(), drawSelection(), history(),
    language(path), syntaxHighlighting(colours), closeBrackets(), lintGutter(), highlightSelectionMatches(),
    autocompletion({ override: [offers], icons: false }), hoverTooltip(explains), EditorView.lineWrapping,
    EditorState.phrases.of(phrases), heard,
    EditorView.contentAttributes.of({ "aria-label": phrases["text"], spellcheck: "true", tabindex: "0" }),
    // Tab leaves the text for those who use the keyboard alone.
    keymap.of([...closeBracketsKeymap, ...completionKeymap, ...searchKeymap, ...historyKeymap, ...lintKeymap, ...defaultKeymap]),
  ];
  const view = new EditorView({ parent });
  window.tourierEditor.text = () => view.state.doc.toString();
  const fields = { history: historyField };
  return {
    focus: () => view.focus(),
    text: () => view.state.doc.toString(),
    caret: () => view.state.selection.main.head,
    line: () => view.state.doc.lineAt(view.state.selection.main.head).number,
    /** All there is to come back to: text, caret and what can be undone. */
    state: () => view.state.toJSON(fields),
    /** Takes up a text; with `state` as it was left. */
    open(path, text, state) {
      quiet = true;
      line = 0;
      const extensions = parts(path);
      const fresh = () => EditorState.create({ doc: text, extensions });
      let next;
      try {
        next = state && state.doc === text ? EditorState.fromJSON(state, { extensions }, fields) : fresh();
      } catch { next = fresh(); }
      view.setState(next);
      quiet = false;
    },
    /** Puts another text in place of this one, as a change that can be undone. */
    replace(text) {
      const length = view.state.doc.length;
      view.dispatch({ changes: { from: 0, to: length, insert: text }, selection: { anchor: Math.min(view.state.selection.main.head, text.length) } });
    },
    /** Changes a stretch, as typed. */
    change(from, to, insert) {
      const end = Math.min(to, view.state.doc.length);
      view.dispatch({ changes: { from: Math.min(from, end), to: end, insert }, selection: { anchor: Math.min(from, end) + insert.length }, scrollIntoView: true });
    },
    /** Goes to a line, or to a letter. */
    go({ line: to, at, focus = true }) {
      const pos = to ? view.state.doc.line(Math.max(1, Math.min(to, view.state.doc.lines))).from : Math.min(at, view.state.doc.length);
      view.dispatch({ selection: EditorSelection.cursor(pos), effects: EditorView.scrollIntoView(pos, { y: "center" }) });
      if (focus) view.focus();
    },
    /** Shows faults at their places. */
    mark(faults) {
      const end = view.state.doc.length;
      const within = faults.map((it) => ({ ...it, from: Math.min(it.from, end), to: Math.min(Math.max(it.to, it.from), end) }));
      view.dispatch(setDiagnostics(view.state, within));
    },
    view,
  };
}

/** Two states of one text side by side in `parent`: theirs, and ours, which can be changed. */
function beside(parent, path, theirs, ours, phrases) {
  const shared = [lineNumbers(), language(path), syntaxHighlighting(colours), EditorView.lineWrapping, EditorState.phrases.of(phrases)];
  const name = (label) => EditorView.contentAttributes.of({ "aria-label": label });
  const view = new MergeView({
    a: { doc: theirs, extensions: [...shared, EditorState.readOnly.of(true), name(phrases.theirs)] },
    b: { doc: ours, extensions: [...shared, history(), keymap.of([...historyKeymap, ...defaultKeymap]), name(phrases.ours)] },
    parent, revertControls: "a-to-b", highlightChanges: true, gutter: true,
  });
  return { text: () => view.b.state.doc.toString(), close: () => view.destroy() };
}

window.tourierEditor = { create, beside };
