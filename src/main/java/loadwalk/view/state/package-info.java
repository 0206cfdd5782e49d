/**
 * Holds everything the screens show: the walk, the library, connected meters, waves, the live
 * input.
 *
 * <p>In: what other threads and files reported. Out: {@link loadwalk.view.state.ProgramState},
 * which every screen paints from; alarms ({@link loadwalk.view.state.SupplyWatch}) and what the
 * meters fill in ({@link loadwalk.view.state.MeterFill}). It knows no screen.
 */
package loadwalk.view.state;
