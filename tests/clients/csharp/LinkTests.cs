using PowerCheck.Clients.Generated.Models;
using PowerCheck.Clients.Generated.V1.Checks;

namespace PowerCheck.Clients;

public class LinkTests
{
    [Fact]
    public async Task A_rig_in_the_address_gets_the_answer_that_it_gets_in_a_body()
    {
        var posted = await Service.Client.V1.Checks.PostAsync(Rig.Crawler());

        var got = await Service.Client.V1.Checks.GetAsync(request =>
        {
            var query = request.QueryParameters;
            query.Id = "crawler";
            query.MotorKind = GetMotorKindQueryParameterType.Brushless;
            query.MotorSensored = true;
            query.MotorKvRpmPerVolt = "3300";
            query.MotorResistanceMilliohm = "22";
            query.MotorMassG = "160";
            query.ControllerMotorKinds = [GetControllerMotorKindsQueryParameterType.Brushless];
            query.ControllerSensorInput = true;
            query.ControllerMaxCells = "3";
            query.ControllerContinuousCurrentA = "40";
            query.BatteryChemistry = GetBatteryChemistryQueryParameterType.Lipo;
            query.BatterySeriesCells = "3";
            query.BatteryCapacityMah = "2200";
            query.VehicleMassKg = "3.63";
            query.VehicleTireDiameterMm = "118";
            query.VehicleDrivetrainPinionTeeth = "12";
            query.VehicleDrivetrainSpurTeeth = "56";
            query.VehicleDrivetrainTransmissionRatio = "2.8";
            query.VehicleDrivetrainAxleRatio = "3.5";
            query.CourseClimbSlopeDegrees = "45";
            query.CourseWantedMinutes = "30";
        });

        AssertSame(posted, got);
    }

    [Fact]
    public async Task The_link_in_an_answer_leads_to_the_same_answer()
    {
        var posted = await Service.Client.V1.Checks.PostAsync(Rig.Crawler());
        var self = new Uri(Service.Address, posted!.Links!.Self);

        var got = await Service.Client.V1.Checks.WithUrl(self.AbsoluteUri).GetAsync();

        AssertSame(posted, got);
    }

    private static void AssertSame(CheckAnswer? one, CheckAnswer? other)
    {
        Assert.NotNull(one?.Summary);
        Assert.Equal(one.Summary, other?.Summary);
        Assert.NotNull(one.LoadCases?.Climb?.MotorCurrentA);
        Assert.Equal(one.LoadCases.Climb.MotorCurrentA, other?.LoadCases?.Climb?.MotorCurrentA);
    }
}
