/** Row 0: a value with its uncertainty and unit; reading what an operator types; printing. */
package loadwalk.quantity;
