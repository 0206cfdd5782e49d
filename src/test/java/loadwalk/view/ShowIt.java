package loadwalk.view;

class ShowIt {
  public static void main(String[] a) {
    Desk desk = WalkSituations.runningAtFour();
    System.out.println(desk.words(80, 24));
    desk.hears(new ProgramEvent.Pasted("15.5\r\n V\u001b\t"));
    desk.press("Enter");
    System.out.println(desk.model().message() + "\n" + desk.step().latest());
  }
}
