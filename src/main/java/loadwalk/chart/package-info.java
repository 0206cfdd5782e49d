/** Row 1: charts as numbers, drawn as text for terminals or as SVG; knows no amplifier. */
package loadwalk.chart;
