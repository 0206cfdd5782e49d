package loadwalk.walk.fact;

/** Reviews whole steps of a kept walk; a fact calls the method that fits it. */
public interface StepReviewer {

  /** Reviews the brief kept of a step. */
  void briefed(Fact.Briefed kept);

  /** Reviews a step that ended with no doubt raised at its end. */
  void ended(String step);
}
