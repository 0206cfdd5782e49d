/**
 * Proves that the tests catch what would hurt a person: each deliberate fault of {@code
 * src/test/faults} is put into a copy of the tree, and a test has to fail. Run by {@code
 * .ci/faults}; {@link loadwalk.faults.FaultDriver} is the file to open first.
 */
package loadwalk.faults;
