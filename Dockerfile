# Both base images can be replaced, for example by mirrors: docker build --build-arg SDK_IMAGE=… --build-arg RUNTIME_IMAGE=…
ARG SDK_IMAGE=mcr.microsoft.com/dotnet/sdk:10.0
ARG RUNTIME_IMAGE=mcr.microsoft.com/dotnet/aspnet:10.0

FROM ${SDK_IMAGE} AS build
WORKDIR /source
COPY global.json Directory.Build.props Directory.Packages.props .editorconfig ./
COPY src/PowerCheck.Model/PowerCheck.Model.csproj src/PowerCheck.Model/
COPY src/PowerCheck.Api/PowerCheck.Api.csproj src/PowerCheck.Api/
RUN dotnet restore src/PowerCheck.Api
COPY src src
RUN dotnet publish src/PowerCheck.Api --no-restore --configuration Release --output /app -p:UseAppHost=false

FROM ${RUNTIME_IMAGE} AS final
WORKDIR /app
COPY --from=build /app .
ENV ASPNETCORE_HTTP_PORTS=8080
EXPOSE 8080
USER $APP_UID
# The program asks itself, so that the image needs no other one for it.
HEALTHCHECK --interval=30s --timeout=6s --start-period=10s --retries=3 \
    CMD ["dotnet", "PowerCheck.Api.dll", "--probe", "http://127.0.0.1:8080/health/live"]
ENTRYPOINT ["dotnet", "PowerCheck.Api.dll"]
