using BenchmarkDotNet.Running;
using PowerCheck.Bench;

if (args is ["fleet"])
{
    await FleetThroughput.Run();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(SpreadCost).Assembly).Run(args);
