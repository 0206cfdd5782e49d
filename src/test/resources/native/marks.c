/* Leaves a file in the working folder as soon as it is loaded. The test resource is made by:
   gcc -Os -shared -fPIC -nostdlib -s -fno-asynchronous-unwind-tables -Wl,-z,noseparate-code -Wl,--build-id=none -o marks-linux-amd64.so marks.c */
static long call(long number, const char *a, long b, long c) {
  long answer;
  __asm__ volatile("syscall" : "=a"(answer) : "a"(number), "D"(a), "S"(b), "d"(c) : "rcx", "r11", "memory");
  return answer;
}
__attribute__((constructor)) static void mark(void) {
  call(85, "planted-code-ran", 0666, 0); /* creat */
}
