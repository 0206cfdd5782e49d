/** Row 0: strict JSON reading that remembers where each key stood. */
package loadwalk.json;
