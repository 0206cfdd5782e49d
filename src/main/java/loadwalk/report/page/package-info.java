/**
 * Writes pages as text, HTML and Markdown, and the cells of CSV.
 *
 * <pre>
 *  Page: title, warnings, sections of Blocks ──> TextPage, HtmlPage, MarkdownPage
 *  a photo's bytes ──Picture──> the same picture without place, time and names
 * </pre>
 *
 * <p>Texts come in as typed; each writer makes them harmless. Open {@link
 * loadwalk.report.page.Block} first: a new kind of block is a new method that every writer must
 * have.
 */
package loadwalk.report.page;
