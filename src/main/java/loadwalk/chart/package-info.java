/**
 * Row 1: charts as numbers, drawn as text or as SVG; knows no amplifier.
 *
 * <pre>
 *            ┌─ TextChart ──> lines of characters: marks, braille curves
 *  Chart ────┼─ SvgChart ───> inline SVG in the page's own colours
 *            └─ ChartWords ─> one sentence for those who cannot see it
 * </pre>
 *
 * <p>A {@link loadwalk.chart.Chart} holds two axes and its series; open it first.
 */
package loadwalk.chart;
