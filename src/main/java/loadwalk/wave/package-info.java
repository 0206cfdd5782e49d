/** Row 2: test tones and captured waves: reading, judging, finding the limit. */
package loadwalk.wave;
