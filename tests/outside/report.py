"""One line for each check, and the count at the end."""


class Report:
    def __init__(self, folder):
        self.folder = folder
        self.passed = 0
        self.failed = 0

    def check(self, file, what, judge):
        """Runs `judge`, which returns None when all is well and what is wrong otherwise."""
        try:
            fault = judge()
        except Exception as error:  # a file that a reader chokes on has failed the check, and the others still run
            fault = f"{type(error).__name__}: {error}"
        name = f"{file.relative_to(self.folder)} {what}"
        if fault is None:
            self.passed += 1
            print(f"ok   {name}", flush=True)
        else:
            self.failed += 1
            print(f"FAIL {name}: {fault}", flush=True)

    def close(self):
        print(f"outside: {self.passed} passed, {self.failed} failed")
        return 1 if self.failed else 0
