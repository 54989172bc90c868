using BenchmarkDotNet.Running;
using PowerCheck.Bench;

BenchmarkSwitcher.FromAssembly(typeof(SpreadCost).Assembly).Run(args);
