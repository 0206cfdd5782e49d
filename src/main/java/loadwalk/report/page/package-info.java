/**
 * Writes pages as text, HTML and Markdown, and the cells of CSV.
 *
 * <pre>
 *  Page: title, warnings, sections of Blocks ──> TextPage, HtmlPage, MarkdownPage
 *  a photo's bytes ──Picture──> the same picture without place, time and names
 * </pre>
 *
 * <p>Texts come in as typed; each writer makes them harmless. Open {@link
 * loadwalk.report.page.Block} first: each kind of block has one method, which every writer must
 * implement.
 */
package loadwalk.report.page;
