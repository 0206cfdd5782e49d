/**
 * The screens without a walk: home, practice, a new walk and its forms, the ledger.
 *
 * <p>In: keys and the library. Out: the effects that open a walk, a sheet, a plan or the ledger.
 * Open {@link loadwalk.view.home.HomeScreen} first.
 */
package loadwalk.view.home;
