/**
 * Paints cells: lines, paragraphs, fields, menus, bars, big digits and scope pictures.
 *
 * <p>In: a {@link loadwalk.view.canvas.Size}, the {@link loadwalk.view.canvas.Look} of the
 * terminal, text. Out: a {@link loadwalk.view.canvas.Frame} of styled cells. It knows no walk. Open
 * {@link loadwalk.view.canvas.Canvas} first.
 */
package loadwalk.view.canvas;
