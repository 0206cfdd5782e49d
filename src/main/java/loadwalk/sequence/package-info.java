/** Row 2: the scripted procedure: steps as data, their reader and checker. */
package loadwalk.sequence;
