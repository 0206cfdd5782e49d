/** Row 3: model, events, effects, update; a walk is the fold of its journalled events. */
package loadwalk.walk;
