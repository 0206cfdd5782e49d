/**
 * Reads an amplifier or a bench from the lines of a form, and writes one back into lines.
 *
 * <p>In: texts as typed. Out: {@link loadwalk.view.form.FormRead}, the record or the line that is
 * wrong. Open {@link loadwalk.view.form.FormLines} first, then {@link
 * loadwalk.view.form.AmplifierForm}.
 */
package loadwalk.view.form;
