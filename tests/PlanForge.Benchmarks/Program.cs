using BenchmarkDotNet.Running;

// dotnet run -c Release --project tests/PlanForge.Benchmarks -- --filter '*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
