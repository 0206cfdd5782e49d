/**
 * Row 1: charts as numbers, drawn as text or as SVG; nothing here knows about amplifiers.
 *
 * <pre>
 *            ┌─ TextChart ──> lines of characters: marks, braille curves
 *  Chart ────┼─ SvgChart ───> inline SVG in the page's own colours
 *            └─ ChartWords ─> a description for people who cannot see it
 * </pre>
 *
 * <p>Open {@link loadwalk.chart.Chart} first: it holds two axes and the series.
 */
package loadwalk.chart;
